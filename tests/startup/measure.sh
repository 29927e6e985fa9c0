#!/usr/bin/env bash
# Whole-process time of `check` on a 12-port channel beside two hello-worlds, one published ahead of time, one compiled just
# in time. Needs hyperfine (Debian package of that name). Prints milliseconds and the two ratios that matter.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
mkdir -p "$out/hello"
cat > "$out/hello/hello.csproj" <<'P'
<Project Sdk="Microsoft.NET.Sdk">
  <PropertyGroup>
    <OutputType>Exe</OutputType>
    <TargetFramework>net10.0</TargetFramework>
    <InvariantGlobalization>true</InvariantGlobalization>
  </PropertyGroup>
</Project>
P
echo 'System.Console.WriteLine("hello");' > "$out/hello/Program.cs"
dotnet publish "$out/hello" -c Release -r linux-x64 --self-contained false -o "$out/jit" --nologo -v quiet
dotnet publish "$out/hello" -c Release -r linux-x64 -p:PublishAot=true -p:OptimizationPreference=Speed -p:StackTraceSupport=false -p:UseSystemResourceKeys=true -p:EventSourceSupport=false -o "$out/aot" --nologo -v quiet
dotnet publish "$root/src/PolarityMap.Cli" -c Release -r linux-x64 -o "$out/product" --nologo -v quiet
hyperfine -N --warmup 20 --runs "${RUNS:-300}" --export-json "$out/times.json" \
  -n 'hello, ahead of time' "$out/aot/hello" \
  -n 'check, 12 ports' "$out/product/polaritymap check $here/twelve-ports.yaml" \
  -n 'hello, just in time' "$out/jit/hello"
python3 - "$out/times.json" <<'P'
import json, sys
aot, check, jit = (r["median"] * 1000 for r in json.load(open(sys.argv[1]))["results"])
print(f"median ms: hello ahead of time {aot:.2f}, check {check:.2f}, hello just in time {jit:.2f}")
print(f"check / hello ahead of time = {check / aot:.2f} (at most 3), check / hello just in time = {check / jit:.2f} (well under 0.5)")
P
