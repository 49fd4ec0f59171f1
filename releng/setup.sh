#!/bin/bash
# SPDX-License-Identifier: EPL-2.0
# Makes a machine ready to build: Debian packages, a JDK 17 and the Maven that the build needs.
#
#   releng/setup.sh            set everything up and say what is used
#   . releng/setup.sh          the same for the other scripts of this folder, which then have:
#       lw_setup build|test    set up; "build" insists on what building needs, "test" on everything
#       lw_mvn ARGS...         runs that Maven in the project folder
#       lw_build_dist          brings the plain distribution up to date with the sources
#
# Missing packages are installed when run as root or where sudo asks for no password; else one line says what to install.

LW_ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
LW_TOOLS=$LW_ROOT/releng/.tools
LW_MAVEN_VERSION=3.9.16
LW_MAVEN=$LW_TOOLS/apache-maven-$LW_MAVEN_VERSION
LW_DIST=$LW_ROOT/releng/org.loomwright.dist/target/loomwright-0.1.0/loomwright
LW_STAMP=$LW_TOOLS/distribution-built

lw_fail() {
    echo "loomwright build: $*" >&2
    exit 2
}

# Prints the home of a JDK 17: JAVA_HOME, the javac on the PATH, or one in Debian's usual place.
lw_find_jdk() {
    local home javac
    javac=$(command -v javac) && javac=$(readlink -f "$javac")
    for home in "${JAVA_HOME:-}" "${javac%/bin/javac}" /usr/lib/jvm/java-17-openjdk-* /usr/lib/jvm/*17*; do
        if [ -n "$home" ] && [ -x "$home/bin/javac" ] && "$home/bin/javac" -version 2>&1 | grep '^javac 17\.' > /dev/null; then
            echo "$home"
            return 0
        fi
    done
    return 1
}

# Prints the Debian packages whose purpose nothing on this machine serves yet.
lw_missing() {
    lw_find_jdk > /dev/null || echo openjdk-17-jdk-headless
    [ -x "$LW_MAVEN/bin/mvn" ] || command -v mvn > /dev/null || echo maven
    [ "$1" = test ] || return 0
    command -v ngspice > /dev/null || echo ngspice
    command -v Xvfb > /dev/null || echo xvfb
    command -v xauth > /dev/null || echo xauth
    # not grep -q: it would end before ldconfig does, which a calling script with pipefail takes for a failure
    { ldconfig -p 2> /dev/null || /sbin/ldconfig -p 2> /dev/null; } | grep 'libgtk-3\.so\.0' > /dev/null || echo libgtk-3-0
}

lw_install_packages() {
    local level=$1 as_root='' missing still
    missing=$(lw_missing test)
    [ -n "$missing" ] || return 0
    missing=$(echo $missing)
    if command -v apt-get > /dev/null; then
        if [ "$(id -u)" = 0 ]; then
            as_root='env'
        elif sudo -n true 2> /dev/null; then
            as_root='sudo -n env'
        fi
    fi
    if [ -n "$as_root" ]; then
        echo "loomwright build: installing $missing" >&2
        $as_root DEBIAN_FRONTEND=noninteractive apt-get -q update >&2
        $as_root DEBIAN_FRONTEND=noninteractive apt-get -q -y --no-install-recommends install $missing >&2 ||
            echo "loomwright build: apt-get could not install all of: $missing" >&2
        hash -r
    fi
    still=$(echo $(lw_missing "$level"))
    [ -z "$still" ] || lw_fail "please install: $still (Debian: sudo apt-get install $still)"
}

# Any Maven can fetch the right one. It must not start inside the project: an older Maven cannot load the build's extension.
lw_fetch_maven() {
    [ -x "$LW_MAVEN/bin/mvn" ] && return 0
    local work
    echo "loomwright build: fetching Maven $LW_MAVEN_VERSION" >&2
    mkdir -p "$LW_TOOLS"
    work=$(mktemp -d "${TMPDIR:-/tmp}/loomwright-maven.XXXXXX") || exit 2
    (cd "$work" && mvn -B -q org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack \
        "-Dartifact=org.apache.maven:apache-maven:$LW_MAVEN_VERSION:zip:bin" \
        "-DoutputDirectory=$work/maven" "-Dmdep.unpack.markersDirectory=$work/markers" >&2) &&
        chmod +x "$work/maven/apache-maven-$LW_MAVEN_VERSION/bin/mvn" &&
        { mv -T "$work/maven/apache-maven-$LW_MAVEN_VERSION" "$LW_MAVEN" 2> /dev/null || [ -x "$LW_MAVEN/bin/mvn" ]; } ||
        { rm -rf "$work"; lw_fail "could not fetch Maven $LW_MAVEN_VERSION from the public Maven repository"; }
    rm -rf "$work"
}

lw_setup() {
    lw_install_packages "$1"
    JAVA_HOME=$(lw_find_jdk) || lw_fail "no JDK 17 found"
    export JAVA_HOME
    lw_fetch_maven
}

lw_mvn() {
    (cd "$LW_ROOT" && "$LW_MAVEN/bin/mvn" -B "$@")
}

# True when the distribution is missing or a source is newer than the start of its last build.
lw_dist_is_stale() {
    [ -x "$LW_DIST/bin/loomwright" ] && [ -e "$LW_STAMP" ] || return 0
    # folders count too: a deleted file leaves its folder newer; the bundle's own folder changes with every build
    [ -n "$(cd "$LW_ROOT" && find pom.xml .mvn/extensions.xml releng/org.loomwright.{codegen,target,dist}/* \
        bundles/org.loomwright.{model,diagram,engine,export,headless,samples}/* \
        \( -name target -o -name src-gen -o -path '*/bin/org' -o -name plugin.properties \) -prune \
        -o -newer "$LW_STAMP" -print -quit 2> /dev/null)" ]
}

lw_build_dist() {
    lw_dist_is_stale || return 0
    mkdir -p "$LW_TOOLS"
    (
        # two starts at once: the second waits, then finds it built
        if command -v flock > /dev/null; then flock 9; fi
        lw_dist_is_stale || exit 0
        lw_setup build
        echo "loomwright build: the sources are newer than the command line, building it" >&2
        touch "$LW_STAMP.new"
        lw_mvn -q -DskipTests -pl :org.loomwright.codegen,:org.loomwright.samples,:org.loomwright.dist -am package >&2 ||
            lw_fail "the build failed, see above"
        mv "$LW_STAMP.new" "$LW_STAMP"
    ) 9> "$LW_TOOLS/build.lock" || exit 2
}

if [ "${BASH_SOURCE[0]}" = "$0" ]; then
    set -e
    lw_setup test
    echo "JDK:   $JAVA_HOME"
    echo "Maven: $LW_MAVEN"
fi
