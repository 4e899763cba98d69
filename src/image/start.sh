#!/usr/bin/env bash
# Starts the server from the folder of this file, with the start-up cache that train.sh made there. The shell gives its
# process to Java, so that SIGTERM reaches the server. Further options of Java: JDK_JAVA_OPTIONS. STANCEBOOK_TRAIN_TO is
# for this file only: the server refuses to start with a setting that it does not know.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

train_to=${STANCEBOOK_TRAIN_TO:-}
unset STANCEBOOK_TRAIN_TO
cache=()
if [[ -n $train_to ]]; then
  case $train_to in
    *.aot) cache=(-XX:AOTCacheOutput="$train_to") ;;
    *) cache=(-XX:ArchiveClassesAtExit="$train_to") ;;
  esac
elif [[ -f stancebook.aot ]]; then
  cache=(-XX:AOTCache=stancebook.aot)
elif [[ -f stancebook.jsa ]]; then
  cache=(-XX:SharedArchiveFile=stancebook.jsa)
fi
# Beans as they were worked out when the jar was built, which is without the demo studio.
beans=()
[[ "${SPRING_PROFILES_ACTIVE:-} ${JDK_JAVA_OPTIONS:-} $*" == *demo* ]] || beans=(-Dspring.aot.enabled=true)
exec "${JAVA_HOME:?start.sh: JAVA_HOME is not set}/bin/java" "${cache[@]}" "${beans[@]}" \
  -XX:+UseTransparentHugePages -XX:MaxRAMPercentage=60 -XX:+ExitOnOutOfMemoryError -jar stancebook.jar "$@"
