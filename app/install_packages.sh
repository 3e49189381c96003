# Sourced by app/run and tests/run: the checks of the machine, and the packages of app/packages.txt.
# Every refusal is one sentence on stderr that says what to do; the exit code is then 1.
# The caller has set `root` to the folder of the project.

say() { printf '%s\n' "$*"; }

stop() {
    printf 'feltmark: %s\n' "$*" >&2
    exit 1
}

require_debian_12() {
    local name
    name=$(. /etc/os-release 2>/dev/null && printf '%s %s' "${ID:-unknown}" "${VERSION_ID:-}") || name=unknown
    [ "$name" = "debian 12" ] ||
        stop "This script sets up Debian 12 only, and this machine says \"$name\": use Debian 12, or read DEVELOPERS.md for other systems."
}

# require_disk FOLDER GIGABYTES
require_disk() {
    local free
    free=$(df -Pk "$1" | awk 'NR == 2 { print int($4 / 1048576) }')
    [ "$free" -ge "$2" ] ||
        stop "Too little disk: $1 has $free GB free and $2 GB are needed; make room and start again."
}

# wanted_packages KIND...: the packages of these kinds, one a line.
wanted_packages() {
    local kind
    for kind in "$@"; do
        awk -v kind="$kind" '$1 == kind { print $2 }' "$root/app/packages.txt"
    done
}

# missing_packages KIND...: those of them that are not installed.
missing_packages() {
    comm -23 <(wanted_packages "$@" | sort) \
        <(dpkg-query -W -f '${db:Status-Status} ${Package}\n' | awk '$1 == "installed" { print $2 }' | sort -u)
}

# as_root COMMAND...: runs it as root, by sudo where that is needed.
as_root() {
    local sudo=sudo
    if [ "$(id -u)" = 0 ]; then sudo=; fi
    $sudo env DEBIAN_FRONTEND=noninteractive LC_ALL=C "$@"
}

# require_root WHAT: stops unless this user may become root to install WHAT.
require_root() {
    local advice="start this once as root, or as a user with sudo, to install $1."
    [ "$(id -u)" = 0 ] && return
    command -v sudo >/dev/null || stop "This user is not root and there is no sudo: $advice"
    if [ -t 0 ]; then sudo -v; else sudo -n true 2>/dev/null; fi || stop "sudo was refused: $advice"
}

# explain_apt LOG: the one sentence for a failed installation.
explain_apt() {
    if grep -qiE 'no space left|enough free space' "$1"; then
        stop "Too little disk for the packages: make room on /var and /usr and start again."
    elif grep -qiE 'could not resolve|temporary failure|could not connect|unable to connect|failed to fetch|timed out|no route' "$1"; then
        stop "The packages could not be fetched: check the network connection and start again."
    elif grep -qiE 'unable to locate package|no installation candidate' "$1"; then
        stop "Debian's main archive is missing from the package sources: add it in /etc/apt/sources.list and start again."
    fi
    stop "Installing the packages failed: read $1, mend what it names and start again."
}

# install_packages KIND...: installs what is missing; asks nothing of apt when nothing is.
install_packages() {
    local missing log
    missing=$(missing_packages "$@")
    [ -n "$missing" ] || return 0
    require_debian_12
    require_root "$(printf '%s' "$missing" | tr '\n' ' ')"
    require_disk /usr 2
    mkdir -p "$root/build/logs" || stop "The folder $root/build cannot be written: make it writable and start again."
    log=$root/build/logs/packages.log
    say "Installing $(printf '%s\n' "$missing" | wc -l) Debian packages. This needs the network and a few minutes."
    as_root apt-get -o DPkg::Lock::Timeout=300 -o Acquire::Retries=2 update >"$log" 2>&1 || explain_apt "$log"
    # shellcheck disable=SC2086 # one word a package
    as_root apt-get -o DPkg::Lock::Timeout=300 -o Acquire::Retries=2 install -y --no-install-recommends $missing \
        >>"$log" 2>&1 || explain_apt "$log"
}
