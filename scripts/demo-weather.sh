#!/bin/sh
# Makes the weather table of the demo again: the New York rows of weather.csv in the npm package vega-datasets 3.2.1
# (package BSD-3-Clause, data of the US government), in our own columns. Needs npm, tar, awk and sha256sum.
set -eu

package=vega-datasets@3.2.1
packed=6f72fda460a9863fae5fcb32f85bcd49e1761fdea6dc6cf9f4962472881cc5a3
target=$(cd "$(dirname "$0")/.." && pwd)/app/src/main/resources/demo/tansy-lane-weather.csv

folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cd "$folder"
file=$(npm pack --silent "$package")
echo "$packed  $file" | sha256sum --check --quiet
tar -xzf "$file" package/data/weather.csv

# location,date,precipitation,temp_max,temp_min,wind,weather
awk -F, '
    BEGIN { print "date,tmin_c,tmax_c,rain_mm,wind_m_s" }
    $1 == "New York" { print $2 "," $5 "," $4 "," $3 "," $6 }
' package/data/weather.csv >"$target"
echo "wrote $(($(wc -l <"$target") - 1)) days to $target" >&2
