#!/usr/bin/env bash
# Asks the server on this machine for a path and ends well if the answer is 200.
# get.sh PORT PATH
set -euo pipefail

exec 3<>"/dev/tcp/127.0.0.1/$1"
printf 'GET %s HTTP/1.1\r\nHost: localhost:%s\r\nConnection: close\r\n\r\n' "$2" "$1" >&3
read -r -t 10 _ status _ <&3
cat <&3 >/dev/null
[[ $status == 200 ]]
