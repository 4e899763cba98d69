#!/usr/bin/env bash
# Whether the server takes requests. No Java is started for it, and nothing else need be installed.
set -euo pipefail
exec "$(dirname "${BASH_SOURCE[0]}")/get.sh" "${STANCEBOOK_PORT:-8080}" /actuator/health/readiness
