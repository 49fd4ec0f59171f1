#!/bin/bash
# SPDX-License-Identifier: EPL-2.0
# Builds what is missing and checks the demo fleet. Findings are expected: one of its vehicles is wrong on purpose.
#
#   releng/demo.sh [OPTIONS OF check]
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

lw_setup build
lw_build_dist
status=0
"$LW_DIST/bin/loomwright" check "$@" "$LW_ROOT/bundles/org.loomwright.samples/fleet" || status=$?
case $status in
0) echo "demo: the check ran and found nothing" ;;
1) echo "demo: the check ran; the findings above are expected, one vehicle is wrong on purpose" ;;
*)
    echo "demo: the check could not run (exit code $status)" >&2
    exit "$status"
    ;;
esac
