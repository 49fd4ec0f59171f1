#!/bin/bash
# SPDX-License-Identifier: EPL-2.0
# Tries the built distribution and the product of this platform as a user would: unpacked elsewhere, started through a link,
# with an old Java, without a writable cache. Called by test.sh after the build.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"
lw_setup build

work=$(mktemp -d "${TMPDIR:-/tmp}/loomwright-dist.XXXXXX")
trap 'rm -rf "$work"' EXIT
failed=0
ok() { echo "distribution: ok    $*"; }
bad() {
    echo "distribution: WRONG $*" >&2
    failed=$((failed + 1))
}
expect() { # WHAT EXPECTED ACTUAL
    if [ "$2" = "$3" ]; then ok "$1"; else bad "$1: expected '$2', found '$3'"; fi
}

mkdir "$work/place" "$work/place with blanks"
tar xzf "$LW_ROOT/releng/org.loomwright.dist/target/loomwright-0.1.0.tar.gz" -C "$work/place"
home=$work/place/loomwright
ln -s place/loomwright/bin/loomwright "$work/link"
export LOOMWRIGHT_CACHE="$work/cache"

for jar in "$home"/lib/*.jar; do
    name=$(basename "$jar")
    case $name in
    org.loomwright.*) ;;
    *) grep -q "^  $name " "$home/NOTICES" || bad "NOTICES says nothing of $name" ;;
    esac
    signatures=$("$JAVA_HOME/bin/jar" tf "$jar" | grep -cE '^META-INF/[^/]+\.(SF|RSA|DSA|EC)$' || true)
    [ "$signatures" = 0 ] || bad "$name is still signed"
done

# the application inside OSGi is the only class that may need more than is there
missing=$("$JAVA_HOME/bin/jdeps" --multi-release 17 --missing-deps -cp "$home/lib/*" "$home"/lib/org.loomwright.*.jar |
    grep -v -e '^org\.loomwright\.[a-z.]*jar -> not found$' -e LoomwrightApplication || true)
expect "every class that ours need is there" "" "$missing"

status=0
"$work/link" --version > "$work/version" 2> "$work/err" || status=$?
expect "starts through a link" 0 "$status"
expect "says its version on standard output" 1 "$(grep -c . "$work/version")"
expect "is silent on standard error" "" "$(cat "$work/err")"

# the archive is made in the background after the first start
for _ in $(seq 300); do
    [ -z "$(find "$work/cache" -name '*.lock' 2> /dev/null)" ] && break
    sleep 0.1
done
archives=$(find "$work/cache" -name '*.jsa' -size +1000k | wc -l)
expect "makes one start archive" 1 "$archives"

status=0
plain=$(LOOMWRIGHT_CACHE=off "$work/link" check --format json "$home/samples/fleet") || status=$?
case $status in 0 | 1) ok "checks the demo fleet" ;; *) bad "check of the demo fleet: exit code $status" ;; esac
archived_status=0
archived=$("$work/link" check --format json "$home/samples/fleet") || archived_status=$?
expect "gives the same with the archive" "$status $plain" "$archived_status $archived"
LOOMWRIGHT_JAVA_OPTS="-Xlog:class+load=info:file=$work/classes.log" "$work/link" check "$home/samples/fleet" > /dev/null || true
used=$(grep -c 'source: shared objects file (top)' "$work/classes.log" || true)
loaded=$(grep -c 'source: file:' "$work/classes.log" || true)
if [ "$used" -gt $((4 * loaded)) ]; then ok "$used classes come from the archive, $loaded from the jars"; else
    bad "only $used classes come from the archive, $loaded from the jars"
fi

status=0
(mkdir -p "$work/old/bin" && printf 'JAVA_VERSION="11.0.2"\n' > "$work/old/release" && printf '#!/bin/sh\nexit 9\n' > "$work/old/bin/java" &&
    chmod +x "$work/old/bin/java" && JAVA_HOME="$work/old" "$work/link" --version) > "$work/out" 2>&1 || status=$?
expect "refuses an old Java" "3 loomwright: Java 17 or newer is needed; $work/old/bin/java is Java 11.0.2" "$status $(cat "$work/out")"
status=0
JAVA_HOME=/nonexistent "$work/link" --version > "$work/out" 2>&1 || status=$?
expect "says when JAVA_HOME is wrong, in one line" "3 1" "$status $(wc -l < "$work/out")"
status=0
: > "$work/file"
LOOMWRIGHT_CACHE="$work/file/cache" "$work/link" --version > "$work/out" 2>&1 || status=$?
expect "runs without a cache folder" "0 $(cat "$work/version")" "$status $(cat "$work/out")"

status=0
cp -R "$home" "$work/place with blanks/"
"$work/place with blanks/loomwright/bin/loomwright" --version > "$work/out" 2>&1 || status=$?
expect "runs from a folder with blanks" "0 $(cat "$work/version")" "$status $(cat "$work/out")"
status=0
"$work/link" check "no such file" > /dev/null 2> "$work/out" || status=$?
expect "passes an argument with blanks on as it is" "2 1" "$status $(grep -c 'no such file' "$work/out")"

product=$LW_ROOT/releng/org.loomwright.product/target/products/loomwright-headless/linux/gtk/x86_64/loomwright-headless
if [ "$(uname -sm)" = "Linux x86_64" ]; then
    product_status=0
    status=0
    inside=$("$product/bin/loomwright" check --format json "$home/samples/fleet") || product_status=$?
    outside=$("$work/link" check --format json "$home/samples/fleet") || status=$?
    expect "the product says the same as the distribution" "$status $outside" "$product_status $inside"
fi

vehicle=$(find "$home/samples/fleet" -name '*.vehicle' | sort | head -n 1)
if [ -n "$vehicle" ]; then
    times=$(for _ in 1 2 3 4 5 6 7; do
        begin=$(date +%s%N)
        "$work/link" check "$vehicle" > /dev/null || true
        end=$(date +%s%N)
        echo $(((end - begin) / 1000000))
    done | sort -n | sed -n 4p)
    echo "distribution: start to exit of a check of one vehicle: $times ms (median of 7; the aim is 1200 ms)"
fi

[ "$failed" = 0 ] || {
    echo "distribution: $failed wrong" >&2
    exit 1
}
