#!/usr/bin/env bash
# Time from the start of the process to the first page, the packaged jar as it is and unpacked with its start-up cache,
# in turn, each over a new database. Needs the jar: mvn -DskipTests package.
# src/bench/start.sh [RUNS], with JAVA_HOME for the Java to measure.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

: "${JAVA_HOME:?set JAVA_HOME to the Java to measure}"
runs=${1:-5}
scratch=$(mktemp -d)
server=
trap '[[ -z $server ]] || kill -KILL "$server" 2>/dev/null || true; rm -rf "$scratch"' EXIT

src/image/extract.sh target "$scratch/layers"
mkdir "$scratch/app"
cp -a "$scratch"/layers/{dependencies,snapshot-dependencies,application}/. src/image/. "$scratch/app"
"$scratch/app/train.sh"
jar=$(echo "$PWD"/target/stancebook-*.jar)

# once NAME COMMAND...: starts, waits for the sign-in page, prints, ends.
once() {
  local name=$1 from to busy
  shift
  rm -rf "$scratch/data"
  mkdir "$scratch/data"
  from=$(date +%s%N)
  STANCEBOOK_DATA=$scratch/data STANCEBOOK_PORT=$port "$@" >"$scratch/console" 2>&1 &
  server=$!
  until src/image/get.sh "$port" /sign-in 2>/dev/null; do
    kill -0 "$server" || { cat "$scratch/console" >&2; exit 1; }
    sleep 0.02
  done
  to=$(date +%s%N)
  busy=$(awk -v hz="$(getconf CLK_TCK)" '{ printf "%.1f", ($14 + $15) / hz }' "/proc/$server/stat")
  printf '%-6s %6.2f s, %5s s of processor time, %4d MiB resident, load %s\n' "$name" "$(awk "BEGIN { print ($to - $from) / 1e9 }")" \
    "$busy" "$(($(sed -n 's/^VmRSS:[^0-9]*\([0-9]*\).*/\1/p' "/proc/$server/status") / 1024))" "$(cut -d' ' -f1 /proc/loadavg)"
  kill -TERM "$server"
  wait "$server" || true
  server=
}

port=$((20000 + RANDOM % 20000))
"$JAVA_HOME/bin/java" -version 2>&1 | head -1
for ((i = 0; i < runs; i++)); do
  once jar "$JAVA_HOME/bin/java" -jar "$jar"
  once cache "$scratch/app/start.sh"
done | tee "$scratch/runs"
for name in jar cache; do
  grep "^$name " "$scratch/runs" | sort -k2 -n | awk -v name="$name" '{ wall[NR] = $2; }
    END { printf "%s: median %.2f s, fastest %.2f s of %d\n", name, wall[int((NR + 1) / 2)], wall[1], NR }'
done
