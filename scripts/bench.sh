#!/usr/bin/env bash
# Runs the benchmarks whose names match PATTERN (all of them without it); further arguments go to JMH. Machines differ and
# other work disturbs: compare rows of one run, quote no single value.
#   scripts/bench.sh [PATTERN] [JMH options, e.g. -prof gc]
set -euo pipefail
root=$(dirname "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")")
cd "$root"
mvn -q -B -pl bench -am -DskipTests package dependency:build-classpath \
  -Dmdep.outputFile=target/classpath -Dmdep.includeScope=runtime >&2
exec java -cp "bench/target/classes:core/target/classes:data/target/classes:$(cat bench/target/classpath)" \
  org.openjdk.jmh.Main "$@"
