#!/usr/bin/env bash
# Runs the server once over a database that is thrown away, asks it for its health and for pages, and leaves beside it
# what Java learned of its classes: an AOT cache from Java 25 on, an archive of class data before.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

release=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "${JAVA_HOME:?train.sh: JAVA_HOME is not set}/release")
if ((release >= 25)); then cache=stancebook.aot; else cache=stancebook.jsa; fi
rm -f stancebook.aot stancebook.jsa
scratch=$(mktemp -d)
server=
trap '[[ -z $server ]] || kill -KILL "$server" 2>/dev/null || true; rm -rf "$scratch"' EXIT

mkdir "$scratch/data"
touch "$scratch/console"
env -u STANCEBOOK_DB_URL STANCEBOOK_TRAIN_TO=$cache STANCEBOOK_DATA="$scratch/data" STANCEBOOK_PORT=0 \
  STANCEBOOK_ADMIN_EMAIL=training@studio.example STANCEBOOK_ADMIN_PASSWORD="four words thrown away" \
  ./start.sh >"$scratch/console" 2>&1 &
server=$!

fail() {
  cat "$scratch/console" >&2
  echo "train.sh: $1" >&2
  rm -f "$cache"
  exit 1
}

port=
for ((i = 0; i < 1200; i++)); do
  port=$(sed -n 's/.*Tomcat started on port \([0-9]*\).*/\1/p' "$scratch/console")
  if [[ -n $port ]] && ./get.sh "$port" /actuator/health/readiness 2>/dev/null; then break; fi
  kill -0 "$server" 2>/dev/null || fail "the server ended by itself"
  port=
  sleep 0.1
done
[[ -n $port ]] || fail "the server did not get ready within two minutes"
for path in /sign-in /assets/css/main.css /actuator/health /actuator/health/liveness; do
  ./get.sh "$port" "$path" || fail "no good answer for $path"
done

kill -TERM "$server"
# 143: ended because it was asked to.
status=0
wait "$server" || status=$?
server=
[[ $status == 143 || $status == 0 ]] || fail "the server ended with $status"
[[ -s $cache ]] || fail "there is no $cache"
chmod a+r "$cache"
