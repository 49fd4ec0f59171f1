#!/bin/bash
# SPDX-License-Identifier: EPL-2.0
# Builds and runs the benchmarks (JMH).
#
#   releng/benchmark.sh [OPTIONS OF JMH]      for example: releng/benchmark.sh -f 1 -wi 3 -i 5 OperatingPoint
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

lw_setup test
lw_mvn -q -DskipTests -pl :org.loomwright.codegen,:org.loomwright.benchmark -am package >&2
module=$LW_ROOT/tests/org.loomwright.benchmark
cd "$module"
exec "$JAVA_HOME/bin/java" -cp "$(echo target/org.loomwright.benchmark-*.jar):target/lib/*" org.openjdk.jmh.Main "$@"
