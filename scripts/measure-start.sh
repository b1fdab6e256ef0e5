#!/usr/bin/env bash
# Measures a second start to the first page, and the command line's answers, each beside a bare start of the same Java.
# Usage: scripts/measure-start.sh [ROUNDS]. Build first with ./nestyear demo; the class archives must be there.
set -euo pipefail
cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.."
rounds=${1:-5}
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
export NESTYEAR_HOME=$home
ls app/target/run/*.jsa >/dev/null || { echo "no class archive yet: run ./nestyear demo and wait a minute" >&2; exit 2; }

now() { date +%s%N; }
seconds() { awk -v n="$1" 'BEGIN { printf "%.2f", n / 1e9 }'; }
median() { sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }

timed() {
  for ((i = 0; i < rounds; i++)); do
    local from; from=$(now)
    "$@" >/dev/null 2>&1
    echo $(($(now) - from))
  done | median
}

first_page() {
  for ((i = 0; i < rounds; i++)); do
    local from url page; from=$(now)
    coproc pages { exec ./nestyear serve --port 0 --no-browser 2>&1; }
    read -r -u "${pages[0]}" line
    url=$(grep -o 'http://[^ ]*' <<<"$line")
    page=$(curl -s -L -c "$home/cookies" -o /dev/null -w '%{http_code}' "$url")
    echo $(($(now) - from))
    [[ $page == 200 ]] || { echo "the first page answered $page" >&2; exit 1; }
    kill "$pages_PID" 2>/dev/null; wait "$pages_PID" 2>/dev/null || true
  done | median
}

bare=$(timed java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -version)
demo=$(timed ./nestyear demo)
sun=$(timed ./nestyear sun --lat 40.78 --lon -73.97 --at 2015-04-20T14:00:00Z)
page=$(first_page)
for row in "bare Java:$bare" "sun:$sun" "demo plan:$demo" "first page:$page"; do
  n=${row##*:}
  printf '%-12s %s s, %s times a bare Java\n' "${row%:*}" "$(seconds "$n")" "$(awk -v a="$n" -v b="$bare" 'BEGIN { printf "%.1f", a / b }')"
done
