#!/bin/bash
# SPDX-License-Identifier: EPL-2.0
# Starts the workbench of this working copy on the demo fleet, building it first when the sources are newer.
#
#   releng/workbench.sh [ARGUMENTS]      for example: releng/workbench.sh --time, which says how long the start took and ends
#
# Without a display it runs under Xvfb, where nobody sees it. The workspace is kept between starts, in
# releng/org.loomwright.product/target/workbench-workspace or in LOOMWRIGHT_WORKSPACE.
set -euo pipefail
. "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/setup.sh"

case $(uname -sm) in
"Linux x86_64") platform=linux/gtk/x86_64/loomwright-workbench ;;
"Linux aarch64") platform=linux/gtk/aarch64/loomwright-workbench ;;
"Darwin arm64") platform=macosx/cocoa/aarch64/Loomwright.app/Contents/Eclipse ;;
*) lw_fail "there is no workbench for $(uname -sm)" ;;
esac
product=$LW_ROOT/releng/org.loomwright.product/target/products/loomwright-workbench/$platform
stamp=$LW_TOOLS/workbench-built

stale() {
    [ -x "$product/bin/loomwright-workbench" ] && [ -e "$stamp" ] || return 0
    [ -n "$(cd "$LW_ROOT" && find pom.xml .mvn/extensions.xml releng/org.loomwright.{codegen,target}/* releng/org.loomwright.product/*.* \
        bundles/*/* features/*/* \
        \( -name target -o -name src-gen -o -path '*/bin/org' -o -name plugin.properties \) -prune \
        -o -newer "$stamp" -print -quit 2> /dev/null)" ]
}

if stale; then
    lw_setup test
    echo "loomwright workbench: the sources are newer than the product, building it" >&2
    touch "$stamp.new"
    modules=$(cd "$LW_ROOT" && for module in features/*/; do printf ',:%s' "$(basename "$module")"; done)
    lw_mvn -q -DskipTests -pl ":org.loomwright.codegen,:org.loomwright.product$modules" -am package >&2 ||
        lw_fail "the build failed, see above"
    mv "$stamp.new" "$stamp"
else
    JAVA_HOME=$(lw_find_jdk) || lw_fail "no JDK 17 found"
    export JAVA_HOME
fi

export LOOMWRIGHT_WORKSPACE=${LOOMWRIGHT_WORKSPACE:-$LW_ROOT/releng/org.loomwright.product/target/workbench-workspace}
echo "loomwright workbench: starting on the demo fleet, workspace $LOOMWRIGHT_WORKSPACE" >&2
if [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ] && [ "$(uname -s)" = Linux ]; then
    command -v xvfb-run > /dev/null || lw_fail "there is no display; please install: xvfb xauth"
    echo "loomwright workbench: there is no display, running under Xvfb" >&2
    exec xvfb-run -a -s "-screen 0 1600x1000x24" "$product/bin/loomwright-workbench" --demo "$@"
fi
exec "$product/bin/loomwright-workbench" --demo "$@"
