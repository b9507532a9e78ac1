# What run, test and .ci/run need from the machine. Sourced, not run.

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en
# Build servers that outlive the command would keep its output pipe open.
export MSBUILDDISABLENODEREUSE=1 DOTNET_CLI_USE_MSBUILD_SERVER=0 UseSharedCompilation=false

say() { printf '%s\n' "$*" >&2; }
stop_with() { say "$*"; exit 1; }

need_dotnet() {
  command -v dotnet >/dev/null || stop_with "The .NET SDK 10.0 was not found: install it from https://dot.net and start again."
}

# need PACKAGE CHECK...: installs the package unless the check passes.
need() {
  local package=$1; shift
  "$@" && return
  install_package "$package" && "$@" || stop_with "Missing: $package. Install it (Debian, Ubuntu: apt-get install $package) and start again."
}

has_postgres() {
  [ -n "${GRINDSHOP_POSTGRES_BIN:-}" ] && return
  local file
  for file in "$(readlink -f "$(command -v postgres)" 2>/dev/null)" /usr/lib/postgresql/*/bin/postgres; do
    [ -x "$file" ] && [ -x "${file%/*}/initdb" ] && return
  done
  return 1
}

has_chromium() { command -v chromium >/dev/null; }
has_poppler() { command -v pdftotext >/dev/null && command -v pdftoppm >/dev/null; }

# Chromium without a window of its own is twice as fast; where it cannot be had the whole one does.
need_chromium() {
  command -v chromium-headless-shell >/dev/null || install_package chromium-headless-shell || need chromium has_chromium
}

as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"; else sudo -n "$@"; fi
}

install_package() {
  command -v apt-get >/dev/null && as_root true 2>/dev/null || return 1
  say "Installing $1 ..."
  [ "$1" != postgresql ] || as_root sh -c "$no_main_cluster"
  as_root env DEBIAN_FRONTEND=noninteractive sh -c "apt-get update -q && apt-get install -y -q --no-install-recommends $1" </dev/null >&2
}

# The package would otherwise start a server of its own on port 5432.
no_main_cluster='mkdir -p /etc/postgresql-common/createcluster.d &&
  echo "create_main_cluster = false" >/etc/postgresql-common/createcluster.d/grindshop.conf'
