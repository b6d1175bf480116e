# Shared by the scripts in this folder: finds the tools, builds the product once, says in one
# sentence what to do when something is missing. Sourced, never run.
#
#   STILLROOM_JAVA_HOME   a JDK to use before any other
#   STILLROOM_JVM_DIRS    folders that hold JDKs, instead of the usual ones (separated by colons)
#   STILLROOM_CACHE       where Maven and the builds of read-only checkouts are kept
#   MAVEN_OPTS            passed on to Maven, as always

set -u
umask 022

maven_version=3.9.11
dependency_plugin=org.apache.maven.plugins:maven-dependency-plugin:3.8.1
checkout=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)

say() {
  echo "$*" >&2
}

# Ends the script with one sentence that says what to do.
fail() {
  echo "stillroom: $*" >&2
  exit 69
}

# The per-user folder for what we fetch or build outside the checkout.
cache_folder() {
  local home=${HOME:-}
  if [ -n "${STILLROOM_CACHE:-}" ]; then
    echo "$STILLROOM_CACHE"
  elif [ -n "${XDG_CACHE_HOME:-}" ]; then
    echo "$XDG_CACHE_HOME/stillroom"
  elif [ -n "$home" ]; then
    echo "$home/.cache/stillroom"
  else
    echo "${TMPDIR:-/tmp}/stillroom-$(id -u)"
  fi
}

cache=$(cache_folder)

# --- tools ---------------------------------------------------------------------------------------

# Prints the major version of the JDK in $1; nothing if there is none or it cannot compile.
jdk_version() {
  [ -x "$1/bin/javac" ] && [ -x "$1/bin/java" ] || return 0
  if [ -r "$1/release" ]; then
    sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release"
  else
    "$1/bin/java" -version 2>&1 | sed -n '1s/.*version "\([0-9]*\).*/\1/p'
  fi
}

is_new_jdk() {
  local version
  version=$(jdk_version "$1")
  [ -n "$version" ] && [ "$version" -ge 21 ]
}

# Every folder that may hold a JDK, the likeliest first.
jdk_candidates() {
  local java dirs dir
  [ -n "${STILLROOM_JAVA_HOME:-}" ] && echo "$STILLROOM_JAVA_HOME"
  [ -n "${JAVA_HOME:-}" ] && echo "$JAVA_HOME"
  java=$(command -v javac || true)
  [ -n "$java" ] && dirname "$(dirname "$(readlink -f "$java")")"
  dirs=${STILLROOM_JVM_DIRS:-/usr/lib/jvm:/usr/java:/usr/local/lib/jvm:/opt:/opt/java:${HOME:-/}/.sdkman/candidates/java:${HOME:-/}/.jdks}
  printf '%s\n' "$dirs" | tr ':' '\n' | while IFS= read -r dir; do
    for java in "$dir"/*; do
      [ -d "$java" ] && echo "$java"
    done
  done
}

# Sets $jdk.
find_jdk() {
  local candidate
  jdk=
  while IFS= read -r candidate; do
    if is_new_jdk "$candidate"; then
      jdk=$candidate
      return
    fi
  done < <(jdk_candidates)
  fail "no JDK 21 or newer found: install one (on Debian 13 or Ubuntu: sudo apt-get install" \
    "openjdk-21-jdk-headless) or name the folder of yours in STILLROOM_JAVA_HOME."
}

# True if the Maven program $1 is new enough for this build (3.9.9 or later in the 3.x line).
is_new_maven() {
  local version
  version=$(cd / && JAVA_HOME=$jdk "$1" -v 2>/dev/null | sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p' | head -n 1)
  case $version in
    3.9.9 | 3.9.[1-9][0-9]* | 3.[1-9][0-9].*) return 0 ;;
    *) return 1 ;;
  esac
}

# Sets $maven, fetching a new one by its coordinates with whatever Maven there is.
find_maven() {
  local own old tools
  tools=$cache/tools
  own=$tools/apache-maven-$maven_version/bin/mvn
  if [ -x "$own" ] && [ -f "$tools/maven-$maven_version.complete" ]; then
    maven=$own
    return
  fi
  old=$(command -v mvn || true)
  if [ -z "$old" ]; then
    need_packages maven
    old=$(command -v mvn) || fail "no Maven found: install one of version 3."
  fi
  if is_new_maven "$old"; then
    maven=$old
    return
  fi
  say "Fetching Maven $maven_version with the Maven that is here ..."
  mkdir -p "$tools" 2>/dev/null || fail "cannot write to $tools: name a folder in STILLROOM_CACHE."
  rm -rf "$tools/apache-maven-$maven_version"
  # Away from the checkout, whose build extension the old Maven could not load.
  if ! (cd "$tools" && JAVA_HOME=$jdk "$old" -B -q "$dependency_plugin:unpack" \
    "-Dartifact=org.apache.maven:apache-maven:$maven_version:zip:bin" \
    "-DoutputDirectory=$tools" </dev/null) >"$tools/fetch.log" 2>&1 || [ ! -f "$own" ]; then
    explain_failure "$tools/fetch.log" "Maven $maven_version could not be fetched"
  fi
  chmod +x "$own"
  : >"$tools/maven-$maven_version.complete"
  maven=$own
}

# Installs these Debian packages if we may; otherwise names the command.
install_packages() {
  if [ "$(id -u)" != 0 ] || ! command -v apt-get >/dev/null; then
    fail "system packages are missing: run: sudo apt-get install $*"
  fi
  say "Installing: $* ..."
  mkdir -p "$cache" 2>/dev/null
  { apt-get update -qq && DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -qq --no-install-recommends "$@"; } \
    </dev/null >"$cache/packages.log" 2>&1 ||
    fail "could not install $* (see $cache/packages.log): check the network and run:" \
      "apt-get update && apt-get install $*"
}

has_library() {
  { ldconfig -p 2>/dev/null || /sbin/ldconfig -p 2>/dev/null; } | grep -q "$1"
}

# Prints the Debian packages that are missing for one purpose.
missing_packages() {
  case $1 in
    maven) # any Maven: it fetches the one that builds
      [ -x "$cache/tools/apache-maven-$maven_version/bin/mvn" ] || command -v mvn >/dev/null || echo maven
      ;;
    windows) # what the window toolkit needs beyond Java
      has_library 'libgtk-3\.so' || echo libgtk-3-0 librsvg2-common
      has_library 'libfontconfig\.so' || echo libfontconfig1
      [ -n "$(ls -A /usr/share/fonts 2>/dev/null)" ] || echo fonts-dejavu-core
      ;;
    figures) # the JDK measures text with these, even without a display
      has_library 'libfontconfig\.so' && has_library 'libfreetype\.so' ||
        echo libfontconfig1 libfreetype6 fonts-dejavu-core
      ;;
    display) # a display that nobody sees, for the window tests
      command -v Xvfb >/dev/null || echo xvfb xauth
      command -v xwininfo >/dev/null || echo x11-utils
      ;;
  esac
}

# Installs whatever is missing for all of some purposes, or names the one command that does.
need_packages() {
  [ "$(uname)" = Linux ] || return 0
  local purpose wanted=()
  for purpose in "$@"; do
    mapfile -t -O ${#wanted[@]} wanted < <(missing_packages "$purpose" | tr ' ' '\n')
  done
  [ ${#wanted[@]} -gt 0 ] || return 0
  mapfile -t wanted < <(printf '%s\n' "${wanted[@]}" | sort -u)
  install_packages "${wanted[@]}"
}

# --- the build -----------------------------------------------------------------------------------

# Says in one sentence why Maven failed ($1 its log, $2 what was tried), then ends.
explain_failure() {
  local log=$1 what=$2
  if grep -qE 'Unknown host|UnknownHost|Network is unreachable|Connection (refused|timed out|reset)|No route to host|name resolution|nodename nor servname|offline mode|Connect timed out|Could not transfer|Unresolveable build extension|Non-resolvable' "$log"; then
    fail "$what because libraries are missing here and the network does not answer:" \
      "connect once and run this again (details: $log)."
  fi
  if grep -q 'No space left on device' "$log"; then
    fail "$what because the disk is full: make room and run this again (details: $log)."
  fi
  grep -E '^\[ERROR\]|^Error|\[FATAL\]' "$log" | head -n 12 >&2
  fail "$what: the lines above and $log say why."
}

# Sets $work: the checkout itself, or for a read-only one a copy in the user's cache.
choose_work_folder() {
  if [ -w "$checkout" ] && [ -w "$checkout/releng" ]; then
    work=$checkout
  else
    work=$cache/checkouts/$(printf '%s' "$checkout" | cksum | tr -d ' ')
    mkdir -p "$work" 2>/dev/null ||
      fail "this checkout is read-only and so is $cache: name a folder in STILLROOM_CACHE."
    say "The checkout is read-only: building in $work."
    copy_sources
  fi
  results=$work/releng/target
  product=$results/product
}

# Copies what changed from the checkout, leaving the results of earlier builds in place.
copy_sources() {
  (cd "$checkout" && find . \( -name target -o -name .git \) -prune -o -type f -print | sort) \
    >"$work.files"
  if [ -f "$work.files.old" ]; then
    comm -23 "$work.files.old" "$work.files" | (cd "$work" && while IFS= read -r gone; do rm -f "$gone"; done)
  fi
  (cd "$checkout" && while IFS= read -r file; do
    [ "$work/$file" -nt "$file" ] || [ ! "$file" -nt "$work/$file" ] && [ -f "$work/$file" ] || echo "$file"
  done <"$work.files" | tar --format=posix -cf - -T -) | (cd "$work" && tar -xf -) ||
    fail "could not copy the sources to $work: is the disk full?"
  chmod -R u+w "$work"
  mv "$work.files" "$work.files.old"
}

# One build at a time in a checkout.
lock_results() {
  mkdir -p "$results" 2>/dev/null || fail "cannot write to $results: check its permissions."
  if command -v flock >/dev/null; then
    exec 9>"$results/lock"
    if ! flock -n 9; then
      say "Another build of this checkout is running: waiting for it ..."
      flock 9
    fi
  fi
}

# Runs Maven in $work with the log in $results/$1.log; the rest are Maven's words.
run_maven() {
  local log=$results/$1.log
  shift
  (cd "$work" && JAVA_HOME=$jdk "$maven" -B "$@" </dev/null) >"$log" 2>&1
}

# True if the product is there, whole, and no older than what it is made from.
product_is_current() {
  [ -x "$product/stillroom" ] && [ -f "$results/built" ] || return 1
  local newer
  newer=$(cd "$work" && find pom.xml bundles features corpus-example LICENSE THIRD-PARTY.md \
    releng/org.stillroom.target releng/org.stillroom.product \
    \( -name target -o -name src_test -o -name .stillroom -o -name '*tests' \) -prune -o \
    \( -type f -o -path '*/src/*' -o -path 'corpus-example/*' \) \
    -newer "$results/built" -print -quit 2>/dev/null)
  [ -z "$newer" ]
}

# Takes over the product that Maven just made; the old one stays whole until the new one is.
adopt_product() {
  local made=$work/releng/org.stillroom.product/target/products/stillroom/linux/gtk/x86_64/stillroom
  [ -x "$made/stillroom" ] || fail "the build made no product in $made."
  rm -rf "$product.new" "$product.old"
  cp -a "$made" "$product.new" || fail "could not copy the product: is the disk full?"
  [ ! -e "$product" ] || mv "$product" "$product.old"
  mv "$product.new" "$product"
  rm -rf "$product.old"
  mv "$results/building" "$results/built"
}

# Sets $work, $results and $product to those of the checkout itself.
use_checkout() {
  work=$checkout
  results=$work/releng/target
  product=$results/product
}

# Prints the purpose "maven" unless the product is built already.
build_needs() {
  use_checkout
  product_is_current || echo maven
}

# Builds the product if there is none or something changed.
build_product() {
  use_checkout
  product_is_current && return 0
  choose_work_folder
  product_is_current && return 0
  find_jdk
  lock_results
  product_is_current && return 0
  find_maven
  if [ -f "$results/building" ]; then
    say "The last build did not finish: building again from the start."
  fi
  rm -f "$results/built"
  : >"$results/building"
  say "Building Stillroom (once; the first time it fetches its libraries, which takes a few minutes) ..."
  # Named by what is left out: Maven does not see that the product needs features and bundles.
  run_maven build -Dmaven.test.skip=true -Dforbiddenapis.skip=true -pl \
    '!:org.stillroom.tests,!:org.stillroom.workbench.tests,!:org.stillroom.checks,!:org.stillroom.benchmarks' \
    clean package ||
    explain_failure "$results/build.log" "Stillroom could not be built"
  adopt_product
}
