# Sets JAVA_HOME to a JDK of at least version 21; sourced by the scripts beside it.
java_version() {
  # every JDK since 9 says its version in this file, which is quicker than starting it
  sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release" 2>/dev/null
}
is_new_jdk() {
  [ -x "$1/bin/javac" ] || return 1
  v=$(java_version "$1")
  [ "${v:-0}" -ge 21 ]
}
find_jdk() {
  on_path=$(command -v javac 2>/dev/null || true)
  [ -n "$on_path" ] && on_path=$(dirname "$(dirname "$(readlink -f "$on_path")")")
  for jdk in ${JAVA_HOME:+"$JAVA_HOME"} ${on_path:+"$on_path"} /usr/lib/jvm/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    if is_new_jdk "$jdk"; then
      JAVA_HOME=$jdk
      export JAVA_HOME
      return 0
    fi
  done
  return 1
}
if ! find_jdk; then
  echo "daubline: needs a JDK of version 21 or newer; install one (such as openjdk-21-jdk) or set JAVA_HOME to it" >&2
  exit 1
fi
