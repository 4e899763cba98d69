#!/usr/bin/env bash
# Starts the server from the folder of this file, with the start-up cache that train.sh made there. The shell gives its
# process to Java, so that SIGTERM reaches the server. Further options of Java: JDK_JAVA_OPTIONS.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

cache=()
if [[ -n ${STANCEBOOK_TRAIN_TO:-} ]]; then
  case $STANCEBOOK_TRAIN_TO in
    *.aot) cache=(-XX:AOTCacheOutput="$STANCEBOOK_TRAIN_TO") ;;
    *) cache=(-XX:ArchiveClassesAtExit="$STANCEBOOK_TRAIN_TO") ;;
  esac
elif [[ -f stancebook.aot ]]; then
  cache=(-XX:AOTCache=stancebook.aot)
elif [[ -f stancebook.jsa ]]; then
  cache=(-XX:SharedArchiveFile=stancebook.jsa)
fi
exec "${JAVA_HOME:?start.sh: JAVA_HOME is not set}/bin/java" "${cache[@]}" \
  -XX:MaxRAMPercentage=60 -XX:+ExitOnOutOfMemoryError -jar stancebook.jar "$@"
