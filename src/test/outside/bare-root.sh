#!/usr/bin/env bash
# Makes two bare Debian roots below a folder: "bare", with nothing, and "builds", with what the README asks for and the
# shells that it names. Each has a user "newcomer" who has set nothing. Needs root, debootstrap and a mirror.
#
#   bare-root.sh FOLDER                              makes both, in two minutes; they take 1 GB
#   bare-root.sh enter ROOT PROGRAM [ARGUMENT...]    as the newcomer in one of them, in IN_FOLDER or at home
set -euo pipefail

# A /proc of its own, which goes with the last process in there.
with_proc() {
    unshare --mount bash -c 'mount -t proc proc "$1/proc" && exec chroot "$@"' bash "$@"
}

if [[ $1 == enter ]]; then
    with_proc "$2" /usr/bin/env -i /usr/bin/setpriv --reuid newcomer --regid newcomer --clear-groups \
        /usr/bin/env HOME=/home/newcomer USER=newcomer SHELL=/bin/bash TERM=xterm-256color PATH=/usr/local/bin:/usr/bin:/bin \
        bash -c 'cd "$1" && shift && exec "$@"' bash "${IN_FOLDER:-/home/newcomer}" "${@:3}"
    exit
fi

folder=$1
. /etc/os-release
mirror=$(grep -rhoE '^(URIs:|deb) +https?://[^ ]*/debian/?( |$)' /etc/apt/sources.list /etc/apt/sources.list.d 2>/dev/null |
    grep -oE 'https?://[^ ]+' | head -n 1 || true)
mkdir -p "$folder"
exec >"$folder/log" 2>&1
debootstrap --variant=minbase "$VERSION_CODENAME" "$folder/bare" ${mirror:+"$mirror"}
chroot "$folder/bare" /usr/sbin/useradd --create-home --shell /bin/bash newcomer
cp -a "$folder/bare" "$folder/builds"
cp /etc/resolv.conf /etc/hosts "$folder/builds/etc/"
with_proc "$folder/builds" /usr/bin/env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends \
    openjdk-17-jdk-headless maven zsh fish
# Only what newcomer.sh puts there is used.
echo '<settings><offline>true</offline></settings>' >"$folder/builds/etc/maven/settings.xml"
touch "$folder/made"
