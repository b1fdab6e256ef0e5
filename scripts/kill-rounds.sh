#!/usr/bin/env bash
# Kills a program in the middle of its writing as many times as asked (300) and looks after each whether an entry is lost.
# Usage: scripts/kill-rounds.sh [ROUNDS] [SEED]
set -euo pipefail
cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.."
exec mvn -q -B -pl records -am test -Dtest=KilledWriterTest -Dsurefire.failIfNoSpecifiedTests=false \
  -Dnestyear.killRounds="${1:-300}" -Dnestyear.killSeed="${2:-$(date +%s)}"
