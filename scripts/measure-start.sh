#!/usr/bin/env bash
# Measures how long a keeper waits: from ./nestyear to the first page with an answer, and for one command. Each is run
# ROUNDS times (5) on the built program; medians count, single values do not. With --compare the plan of the demo is also
# computed with and without the second compiler, to see what the fast start costs. Goals on two cores: first page within
# 3 s, a command within 1 s.
set -euo pipefail

root=$(dirname "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")")
rounds=${ROUNDS:-5}
home=$(mktemp -d)
export NESTYEAR_HOME=$home/records
server=
times=()
trap '[[ -z $server ]] || kill "$server" 2>/dev/null; rm -rf "$home"' EXIT
cd "$home"

now() { date +%s%N; }
since() { awk -v a="$1" -v b="$(now)" 'BEGIN { printf "%.2f", (b - a) / 1e9 }'; }
median() { printf '%s\n' "${times[@]}" | sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }
report() { awk -v what="$1" -v got="$(median)" -v goal="$2" -v n="$rounds" \
  'BEGIN { printf "%-44s %6.2f s  median of %d  goal %s s  ratio %.2f\n", what, got, n, goal, got / goal }'; }

start_server() {
  : >"$home/log"
  "$@" >"$home/log" 2>&1 &
  server=$!
  until grep -q 'http://' "$home/log"; do
    kill -0 "$server" 2>/dev/null || { cat "$home/log" >&2; exit 1; }
    sleep 0.02
  done
  curl -s -L -c "$home/cookies" -b "$home/cookies" -o "$home/page" "$(grep -o 'http://[^ ]*' "$home/log")"
}

stop_server() {
  kill "$server"
  wait "$server" 2>/dev/null || true
  server=
}

# Sends a form of a page: its path, then its fields.
send() {
  local base proof path=$1
  shift
  base=$(grep -o 'http://[^?]*' "$home/log")
  proof=$(curl -s -b "$home/cookies" "${base}seasons" | sed -n 's/.*name="_csrf" value="\([^"]*\)".*/\1/p' | head -n 1)
  curl -s -L -o "$home/page" -b "$home/cookies" --data-urlencode "_csrf=$proof" "$@" "${base}$path"
}

pages() {
  times=()
  for ((i = 0; i < rounds; i++)); do
    local begin
    begin=$(now)
    start_server "$root/nestyear" serve --port 0 --no-browser
    times+=("$(since "$begin")")
    grep -q "$1" "$home/page" || { echo "the page lacks \"$1\"" >&2; exit 1; }
    stop_server
  done
}

command_line() {
  times=()
  for ((i = 0; i < rounds; i++)); do
    local begin
    begin=$(now)
    "$@" >"$home/answer" 2>&1
    times+=("$(since "$begin")")
  done
}

# Builds, unpacks and makes the archives, so that what follows is a second start.
echo "preparing ..." >&2
"$root/nestyear" --version >&2
until [[ ! -d $root/app/target/run/archiving ]]; do sleep 0.5; done

command_line "$root/nestyear" --version
report 'command: --version' 1
command_line "$root/nestyear" sun --lat 40.78 --lon -73.97 --at 2015-04-20T12:00:00Z
report 'command: sun' 1
command_line "$root/nestyear" demo
report 'command: demo, a whole plan' 1
pages 'Open a season\|When do the bees go out'
report 'pages: no season yet' 3
start_server "$root/nestyear" serve --port 0 --no-browser
send seasons/demo
stop_server
pages 'To do, in order'
report 'pages: the plan of the season kept' 3

if [[ ${1-} == --compare ]]; then
  fast=(-XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto -Xlog:disable)
  for mode in one two; do
    flags=("${fast[@]}")
    [[ $mode == two ]] || flags+=(-XX:TieredStopAtLevel=1)
    for kind in cli serve; do
      archive=$(ls "$root/app/target/run/$kind-"*.jsa)
      run=(java "${flags[@]}" "-XX:SharedArchiveFile=$archive" -jar "$root/app/target/run/nestyear-app.jar")
      if [[ $kind == cli ]]; then
        command_line "${run[@]}" demo
        report "compilers: $mode, command: demo" 1
      else
        pages_with=("${run[@]}" serve --port 0 --no-browser)
        times=() later=()
        for ((i = 0; i < rounds; i++)); do
          begin=$(now)
          start_server "${pages_with[@]}"
          times+=("$(since "$begin")")
          begin=$(now)
          for aim in brood bloom both; do send release/aim --data-urlencode "aim=$aim"; done
          later+=("$(since "$begin")")
          stop_server
        done
        report "compilers: $mode, pages: first" 3
        times=("${later[@]}")
        report "compilers: $mode, pages: three more plans" 3
      fi
    done
  done
fi
