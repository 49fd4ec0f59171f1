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
if ! lw_mvn "$@" verify; then
    echo "loomwright: the build or a test FAILED, see above" >&2
    exit 1
fi
mv "$LW_STAMP.new" "$LW_STAMP"
"$LW_ROOT/releng/check-dist.sh"
echo "loomwright: everything is built and all tests passed"
