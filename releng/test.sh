#!/bin/bash
# SPDX-License-Identifier: EPL-2.0
# Builds everything from the metamodel to the products and runs all tests.
#
#   releng/test.sh [MAVEN ARGUMENTS]      for example: releng/test.sh clean, releng/test.sh -o
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

lw_setup test
mkdir -p "$LW_TOOLS"
touch "$LW_STAMP.new"
# the tests of the workbench open windows: where there is no display, on one that nobody sees
if [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    rm -f "$LW_TOOLS/display"
    Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3> "$LW_TOOLS/display" 2> /dev/null &
    xvfb=$!
    trap 'kill $xvfb 2> /dev/null || true' EXIT
    for _ in $(seq 100); do
        [ ! -s "$LW_TOOLS/display" ] || break
        sleep 0.1
    done
    [ -s "$LW_TOOLS/display" ] || lw_fail "Xvfb did not start"
    DISPLAY=:$(cat "$LW_TOOLS/display")
    export DISPLAY
fi
if ! lw_mvn "$@" verify; then
    echo "loomwright: the build or a test FAILED, see above" >&2
    exit 1
fi
mv "$LW_STAMP.new" "$LW_STAMP"
"$LW_ROOT/releng/check-dist.sh"
echo "loomwright: everything is built and all tests passed"
