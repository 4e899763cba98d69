#!/usr/bin/env bash
# Unpacks the packaged jar into folders that change at different speeds, one for each layer of the image.
# extract.sh FOLDER-OF-THE-JAR TO
set -euo pipefail

jars=("$1"/stancebook-*.jar)
if [[ ${#jars[@]} -ne 1 || ! -f ${jars[0]} ]]; then
  echo "extract.sh: there must be one stancebook-*.jar in $1, not: ${jars[*]}" >&2
  exit 1
fi
"${JAVA_HOME:?extract.sh: JAVA_HOME is not set}/bin/java" -Djarmode=tools -jar "${jars[0]}" \
  extract --layers --destination "$2" --application-filename stancebook.jar
# A layer may be empty, but a copy from a folder that is not there fails.
mkdir -p "$2"/{dependencies,snapshot-dependencies,application}
