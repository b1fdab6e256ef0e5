#!/usr/bin/env bash
# Measures the records at their largest size: an invented account of 200 sites, ten years and 200 000 entries in a
# temporary folder, its pages one after the other, an import of 100 000 readings, the archive out and back. Prints
# medians and the 95th of a hundred; machines differ and other work disturbs, so compare rows of one run.
#   scripts/bench-records.sh [ROUNDS]   each page is asked for ROUNDS times (100 at most, 100 without it)
# Needs curl. NESTYEAR_BENCH_KEEP=FOLDER keeps the account in that folder and takes it up again at the next run.
set -euo pipefail
root=$(dirname "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")")
cd "$root"
rounds=${1:-100}
port=${NESTYEAR_BENCH_PORT:-18917}
work=$(mktemp -d)
kept=${NESTYEAR_BENCH_KEEP:-$work/kept}
server=
trap '[[ -z $server ]] || kill "$server"; rm -rf "$work"' EXIT

# The heap that keeps all a process holds below 512 MB; the collector and compiler are those of ./nestyear.
java=(java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx256m)

[[ -f app/target/nestyear-app.jar ]] || mvn -q -B -Dmaven.test.skip=true -pl app -am package >&2
"${java[@]}" -Djarmode=tools -jar app/target/nestyear-app.jar extract --destination "$work/run" >/dev/null
app=("${java[@]}" -jar "$work/run/nestyear-app.jar")

if [[ ! -f $kept/pages.txt ]]; then
  mvn -q -B -pl bench -am -DskipTests compile dependency:build-classpath \
    -Dmdep.outputFile=target/classpath -Dmdep.includeScope=runtime >&2
  mkdir -p "$kept/records"
  begun=$(date +%s.%N)
  java -cp "bench/target/classes:core/target/classes:data/target/classes:records/target/classes:$(cat bench/target/classpath)" \
    org.nestyear.records.book.LargeAccount "$kept/records" "$kept/reading.csv" "$kept/pages.txt"
  echo "made in $(awk -v a="$begun" -v b="$(date +%s.%N)" 'BEGIN { printf "%.0f", b - a }') s"
fi
cp -r "$kept/records" "$work/records"

# Peak resident memory of a process that still lives, in MB.
peak() { awk '/VmHWM/ { printf "%.0f", $2 / 1024 }' "/proc/$1/status"; }

echo
echo "pages: time on the server, ms"
NESTYEAR_HOME=$work/records "${app[@]}" serve --no-browser --no-token --port "$port" >"$work/serve.log" 2>&1 &
server=$!
for _ in $(seq 100); do
  curl -s -o /dev/null "http://127.0.0.1:$port/records" && break
  sleep 0.2
done
printf '%-18s %8s %8s %8s\n' page p50 p95 most
pages() { awk -v rounds="$rounds" '{ if (++n[$1] <= rounds) print }' "$kept/pages.txt"; }
ask() {
  awk -v base="http://127.0.0.1:$port" '{ print "url = \"" base $2 "\"\noutput = /dev/null" }' |
    curl -s -K - -w '%{http_code} %{time_pretransfer} %{time_starttransfer}\n'
}
# Ten of each first, so that what is measured is a program that has been running for a while.
awk '++n[$1] <= 10' "$kept/pages.txt" | ask >/dev/null
for page in $(awk '{ print $1 }' "$kept/pages.txt" | sort -u); do
  pages | awk -v page="$page" '$1 == page' | ask |
    awk '$1 != 200 { bad++ } { printf "%.1f\n", ($3 - $2) * 1000 } END { if (bad) print bad " answers were no page" > "/dev/stderr" }' |
    sort -n | awk -v page="$page" '{ t[NR] = $1 } END { printf "%-18s %8.1f %8.1f %8.1f\n", page, t[int((NR + 1) / 2)], t[int(NR * 0.95 + 0.5)], t[NR] }'
done
echo "peak memory of the server: $(peak "$server") MB"
kill "$server"
wait "$server" || true
server=

# Runs a command; the moments of its words of progress are kept, and its peak memory.
timed() {
  local name=$1 begun pid most=0
  shift
  begun=$(date +%s.%N)
  "${app[@]}" "$@" >"$work/out" 2> >(while IFS= read -r line; do echo "$(date +%s.%N) $line"; done >"$work/err") &
  pid=$!
  while kill -0 "$pid" 2>/dev/null; do
    most=$(peak "$pid" 2>/dev/null || echo "$most")
    sleep 0.05
  done
  wait "$pid" || { cat "$work/err" >&2; exit 1; }
  awk -v name="$name" -v a="$begun" -v b="$(date +%s.%N)" -v mb="$most" -v file="$work/err" 'BEGIN {
    while ((getline line < file) > 0) {
      split(line, words, " ");
      if (line ~ /writing/ && !at) at = words[1];
      steps++
    }
    printf "%-18s %6.1f s", name, b - a;
    if (at) printf ", of these %.1f s before writing and %.1f s after", at - a, b - at;
    printf ", %d words of progress, peak %s MB\n", steps, mb
  }'
}

echo
echo "commands, with the start of the program"
cp -r "$kept/records" "$work/empty" && rm -f "$work"/empty/*
timed "import" import "$kept/reading.csv" --data "$work/records"
timed "import again" import "$kept/reading.csv" --data "$work/records"
timed "export of all" export "$work/all.zip" --data "$work/records"
timed "archive into empty" import "$work/all.zip" --data "$work/empty"
timed "archive again" import "$work/all.zip" --data "$work/empty"
