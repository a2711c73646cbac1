# Sourced by the scripts beside it. Sets root, JAVA_HOME and MVN; installs what a fresh Debian machine lacks.
# Running it again with everything in place costs well under a second.
root=$(cd "$(dirname "$0")/.." && pwd)
tools=$root/.tools
maven_version=3.9.11
needed_java=21
packages="git maven xvfb xauth libgtk-3-0 dbus-x11 at-spi2-core adwaita-icon-theme fonts-dejavu-core imagemagick x11-utils"

say() { printf '%s\n' "$*" >&2; }
fail() { say "$*"; exit 1; }

java_major() {
    [ -x "$1/bin/javac" ] || return 1
    "$1/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p'
}

# A JDK of at least $needed_java: JAVA_HOME, then the newest in the system's JVM folder, then PATH.
find_jdk() {
    major=$(java_major "${JAVA_HOME:-/nonexistent}") || major=0
    if [ "${major:-0}" -ge $needed_java ]; then export JAVA_HOME; return 0; fi
    best=0; best_home=
    for home in /usr/lib/jvm/*; do
        major=$(java_major "$home") || continue
        if [ "${major:-0}" -ge $needed_java ] && [ "$major" -gt "$best" ]; then best=$major; best_home=$home; fi
    done
    if [ -z "$best_home" ] && command -v javac >/dev/null; then
        home=$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")
        major=$(java_major "$home") || major=0
        [ "${major:-0}" -ge $needed_java ] && best_home=$home
    fi
    [ -n "$best_home" ] || return 1
    JAVA_HOME=$best_home; export JAVA_HOME
}

installed() { dpkg-query -W -f '${Status}' "$1" 2>/dev/null | grep -q '^install ok installed'; }

install_packages() {
    as_root=
    if [ "$(id -u)" != 0 ]; then
        command -v sudo >/dev/null || fail "These Debian packages are missing and need root to install: $*"
        as_root=sudo
    fi
    say "Installing Debian packages: $*"
    log=$(mktemp)
    { $as_root apt-get -o DPkg::Lock::Timeout=200 update -qq &&
      DEBIAN_FRONTEND=noninteractive $as_root apt-get -o DPkg::Lock::Timeout=200 install -y -qq --no-install-recommends "$@"
    } >"$log" 2>&1 || { tail -n 5 "$log" >&2; fail "Could not install the Debian packages: $*"; }
    rm -f "$log"
}

set_up_packages() {
    command -v dpkg-query >/dev/null || { find_jdk || fail "Install a JDK $needed_java or newer and set JAVA_HOME."; return; }
    missing=
    for package in $packages; do
        # libgtk-3-0 is called libgtk-3-0t64 in newer releases
        installed "$package" || installed "${package}t64" || missing="$missing $package"
    done
    # shellcheck disable=SC2086
    [ -z "$missing" ] || install_packages $missing
    find_jdk && return
    for package in openjdk-25-jdk-headless openjdk-21-jdk-headless; do
        if apt-cache show "$package" >/dev/null 2>&1; then install_packages "$package"; break; fi
    done
    find_jdk || fail "Install a JDK $needed_java or newer (this Debian release has none) and set JAVA_HOME to it."
}

# Debian's Maven is too old to start Tycho; it fetches the one that can.
set_up_maven() {
    MVN=$tools/apache-maven-$maven_version/bin/mvn
    [ -x "$MVN" ] && return
    say "Fetching Maven $maven_version"
    mkdir -p "$tools/download"
    (cd "$tools/download" && mvn -q -B org.apache.maven.plugins:maven-dependency-plugin:3.6.1:copy \
        -Dartifact=org.apache.maven:apache-maven:$maven_version:tar.gz:bin -DoutputDirectory="$tools/download" \
        >"$tools/download/log" 2>&1) || { tail -n 5 "$tools/download/log" >&2; fail "Could not fetch Maven $maven_version."; }
    tar -xzf "$tools/download/apache-maven-$maven_version-bin.tar.gz" -C "$tools"
}

maven() {
    MAVEN_OPTS="--enable-native-access=ALL-UNNAMED -Xmx2g ${MAVEN_OPTS:-}" "$MVN" -B -ntp -f "$root/pom.xml" "$@"
}

product=$root/releng/org.roofspring.product/target/products/org.roofspring.product/linux/gtk/x86_64

# What the built product depends on: names, sizes and times of all sources.
source_state() {
    (cd "$root" && find pom.xml .mvn bundles features releng -type f -not -path '*/target/*' -not -path '*/bin/*' \
        -not -name '.tycho-consumer-pom.xml' -printf '%p %s %T@\n' | LC_ALL=C sort | sha256sum)
}

# Builds the product unless nothing has changed since the last build.
build_product() {
    state=$(source_state)
    stamp=$root/.tools/built
    if [ -d "$product" ] && [ -f "$stamp" ] && [ "$(cat "$stamp")" = "$state" ]; then return; fi
    say "Building Roofspring (a first build fetches about 250 MB and takes some minutes)"
    log=$root/.tools/build.log
    maven -DskipTests package >"$log" 2>&1 || { grep -E 'ERROR|BUILD' "$log" | head -n 20 >&2; fail "The build failed; see .tools/build.log"; }
    # the build writes no sources, so the state from before it still holds
    printf '%s\n' "$state" >"$stamp"
}
