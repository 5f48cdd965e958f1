# What the machine must have; sourced by run and test. need PACKAGE… installs Debian packages when this is root,
# otherwise says the one command to type.
need() {
  missing=
  for package in "$@"; do
    dpkg -s "$package" >/dev/null 2>&1 || missing="$missing $package"
  done
  [ -z "$missing" ] && return 0
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    echo "installing$missing" >&2
    apt-get update -qq >&2 || true
    # shellcheck disable=SC2086
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq $missing >/dev/null
  else
    echo "daubline: this machine lacks$missing. Type: sudo apt-get install$missing" >&2
    return 1
  fi
}
on_debian() {
  command -v dpkg >/dev/null
}
gtk_package() {
  # the package was renamed in the 64-bit time transition
  if apt-cache show libgtk-3-0t64 >/dev/null 2>&1; then echo libgtk-3-0t64; else echo libgtk-3-0; fi
}
need_jdk() {
  ( . releng/java.sh ) 2>/dev/null && return 0
  on_debian && for jdk in openjdk-25-jdk-headless openjdk-21-jdk-headless; do
    if apt-cache show "$jdk" >/dev/null 2>&1; then need "$jdk"; return; fi
  done
  ( . releng/java.sh )
}
need_for_build() {
  need_jdk
  command -v mvn >/dev/null || [ -d "${XDG_CACHE_HOME:-$HOME/.cache}/daubline" ] || { on_debian && need maven; }
}
need_for_figures() {
  on_debian || return 0
  need fontconfig fonts-dejavu-core
}
# Programs that read what we write, for the tests; where one cannot be had, its tests are skipped and say so.
need_for_readers() {
  on_debian || return 0
  need libreoffice-calc libreoffice-writer python3-openpyxl python3-jsonschema r-cran-readxl poppler-utils libxml2-utils ||
    echo "tests with these programs will be skipped" >&2
}
need_for_window() {
  on_debian || return 0
  need "$(gtk_package)" fonts-dejavu-core fontconfig adwaita-icon-theme
}
# Constants of the model are copied into the classes that use them, and the platform's compiler looks at changed sources only:
# after a change of the model its old classes would go on with old numbers.
forget_classes() {
  rm -rf bundles/*/target/classes
}
