#!/usr/bin/env bash
# Whole-process time of `draw` beside Graphviz's dot, which draws the same plants as graphs: a record for each part with its
# positions left and right, an edge for each strand in each mating. Plants of 144, 864 and 3456 strands. Prints CPU time
# (user and system), which other work on the machine disturbs least, wall time, their ratios, and how `draw` grows.
# Needs hyperfine and dot (Debian packages hyperfine and graphviz). Nothing is judged by time: it fails only if a tool does.
#
# usage: measure.sh [RUNS]    RUNS (20) of `draw` and of the smallest plant; fewer where dot takes long
# PRODUCT=FILE                measures a program that is published already
set -euo pipefail
export LC_ALL=C
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
runs=${1:-20}
[[ $runs =~ ^[1-9][0-9]*$ ]] || { echo "usage: $0 [RUNS]" >&2; exit 1; }
for tool in dotnet hyperfine dot; do
  command -v "$tool" > /dev/null || { echo "this needs $tool; Debian packages are hyperfine and graphviz (for dot)" >&2; exit 1; }
done
# In memory where that can be had, so that the journal of a disk is not measured: both tools write there.
out=$(mktemp -d -p "$([[ -w /dev/shm ]] && echo /dev/shm || echo "${TMPDIR:-/tmp}")")
trap 'rm -rf "$out"' EXIT
dotnet run --project "$root/tests/PolarityMap.Benchmarks" -c Release --artifacts-path "$out/build" -- --drawing "$out"
if [[ -n ${PRODUCT:-} ]]; then
  mkdir "$out/product"
  cp "$PRODUCT" "$out/product/polaritymap"
else
  dotnet publish "$root/src/PolarityMap.Cli" -c Release -r linux-x64 -o "$out/product" --artifacts-path "$out/build" --nologo -v quiet
fi
product=$out/product/polaritymap
cd "$out"

draw() { echo "$product draw plant-$1.yaml --paper A3 --without-font -o sheets-$1/"; }
few() { echo $(($1 > $2 ? $1 : $2)); }

# name of the table, warm-up runs, runs, then the commands with their names
time_them() {
  local table=$1 warm=$2 count=$3
  shift 3
  hyperfine -N --style basic --warmup "$warm" --runs "$count" --export-csv "$table.csv" "$@" > "$table.log" 2>&1 || { cat "$table.log" >&2; exit 1; }
}

time_them growth 1 "$runs" -n start "$product explain P01" -n draw-864 "$(draw 864)" -n draw-3456 "$(draw 3456)"
time_them size-144 1 "$runs" -n draw "$(draw 144)" -n dot 'dot -Tsvg plant-144.dot -o plant-144.dot.svg'
time_them size-864 0 "$(few $((runs / 4)) 3)" -n draw "$(draw 864)" -n dot 'dot -Tsvg plant-864.dot -o plant-864.dot.svg'
time_them size-3456 0 "$(few $((runs / 10)) 2)" -n draw "$(draw 3456)" -n dot 'dot -Tsvg plant-3456.dot -o plant-3456.dot.svg'

# Columns of the tables: command, mean, stddev, median, user, system, min, max; all in seconds.
echo
echo '| strands | draw, CPU ms | dot, CPU ms | dot / draw, CPU | aim | draw, wall ms | dot, wall ms | dot / draw, wall |'
echo '| --- | ---: | ---: | ---: | --- | ---: | ---: | ---: |'
for size in 144:3 864:30 3456:90; do
  awk -F, -v strands="${size%:*}" -v aim="${size#*:}" '
    $1 == "draw" || $1 == "dot" { cpu[$1] = ($5 + $6) * 1000; wall[$1] = $2 * 1000 }
    END {
      ratio = cpu["dot"] / cpu["draw"]
      printf "| %d | %.1f | %.1f | %.1f | %d: %s | %.1f | %.1f | %.1f |\n", strands, cpu["draw"], cpu["dot"], ratio, aim,
        (ratio >= aim ? "met" : "not met"), wall["draw"], wall["dot"], wall["dot"] / wall["draw"]
    }' "size-${size%:*}.csv"
done
echo
awk -F, '
  NR > 1 { cpu[$1] = ($5 + $6) * 1000 }
  END {
    small = cpu["draw-864"] - cpu["start"]
    large = cpu["draw-3456"] - cpu["start"]
    printf "draw, 3456 strands: %.1f ms of CPU (aim: at most 50, %s)\n", cpu["draw-3456"], (cpu["draw-3456"] <= 50 ? "met" : "not met")
    printf "growth from 864 to 3456 strands, four times as many: %.1f ms to %.1f ms of CPU without the %.1f ms of a start, %.2f times (4 is in step)\n",
      small, large, cpu["start"], large / small
  }' growth.csv
