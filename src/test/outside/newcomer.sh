#!/usr/bin/env bash
# Plays a newcomer: a fresh home without any settings or LANG, and the README's blocks run in their order as they stand.
# What each block says and leaves behind is checked. Needs bash, python3, git and a Maven cache; goes on no network.
#
#   newcomer.sh            in the top folder of the project; mvn -q verify, the second block, is left to who calls this
#   newcomer.sh FOLDER     the same within the bare roots that bare-root.sh made there, and the package that brings its
#                          own Java where there is no other
#   newcomer.sh FOLDER verify    the second block too
set -euo pipefail
project=$PWD
roots=${1:-}
outside=$project/src/test/outside
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
export GIT_OPTIONAL_LOCKS=0

failures=0
expect() {
    local what=$1
    shift
    if "$@" >"$scratch/expected" 2>&1; then
        echo "newcomer: $what"
    else
        echo "newcomer: NOT $what"
        sed 's/^/    /' "$scratch/expected" | head -20
        failures=$((failures + 1))
    fi
}

# The n-th block of the README, as it stands.
block() {
    awk -v wanted="$1" '/^```/ { inside = !inside; if (inside) number++; next } inside && number == wanted' "$project/README.md"
}

# A command in the newcomer's home and checkout, with nothing of the caller's environment.
newcomer=(env -i HOME="$scratch/home" PATH="$scratch/tools:/usr/local/bin:/usr/bin:/bin" TERM=xterm-256color
    USER=newcomer SHELL=/bin/bash)
checkout=$scratch/takeup
home=$scratch/home
if [[ -n $roots ]]; then
    export IN_FOLDER=/home/newcomer/takeup
    home=$roots/builds/home/newcomer
    checkout=$home/takeup
    newcomer=(bash "$outside/bare-root.sh" enter "$roots/builds")
fi
as_newcomer() {
    (cd "$checkout" && "${newcomer[@]}" "$@" </dev/null)
}
has() {
    as_newcomer bash -c "command -v $1" >/dev/null
}

# The same on a terminal, where keys are typed after some words were seen: the words, the keys.
on_a_terminal() {
    local seen=$1 keys=$2
    shift 2
    # Each waits up to 20 s, and no longer than until the words are there.
    printf '%ssee %s\nbytes %s\npause 5000\n' "$(yes "see $seen" | head -n 15 || true)
" "$seen" "$(printf "$keys" | od -An -tx1 | tr -d ' \n')" |
        (cd "$checkout" && python3 "$outside/manners.py" 80x24 "${newcomer[@]}" "$@") >"$scratch/terminal" 2>&1
    tail -c 300 "$scratch/terminal"
    grep -aqF "$seen" <(grep -av 'waited in vain' "$scratch/terminal") && [[ $(tail -n 1 "$scratch/terminal") == "status 0" ]]
}

mkdir -p "$home" "$checkout"
git ls-files -z | xargs -0 tar cf - | tar xf - -C "$checkout"
# The Maven cache of whoever runs this, so that nothing is fetched; all else of mvn is as the newcomer has it.
cache=${MAVEN_CACHE:-$HOME/.m2/repository}
if [[ -n $roots ]]; then
    mkdir -p "$home/.m2"
    cp -r "$cache" "$home/.m2/repository"
    chroot "$roots/builds" /usr/bin/chown -R newcomer:newcomer /home/newcomer
else
    mkdir "$scratch/tools"
    printf '#!/bin/sh\nexec %s -o -Dmaven.repo.local=%s "$@"\n' "$(command -v mvn)" "$cache" >"$scratch/tools/mvn"
    chmod +x "$scratch/tools/mvn"
fi

if [[ -n $roots && -e target/takeup-1.0.0-with-java.tar.gz ]]; then
    tar xzf target/takeup-1.0.0-with-java.tar.gz -C "$roots/bare/opt"
    without_java() {
        IN_FOLDER=/home/newcomer bash "$outside/bare-root.sh" enter "$roots/bare" "$@"
    }
    expect "a root without Java has none" without_java bash -c '! command -v java'
    expect "the package with its own Java starts there" without_java bash -c \
        '/opt/takeup/bin/takeup --version | grep "in /opt/takeup/java$"'
    expect "a roll goes through it" without_java bash -c '
        printf "cam 645\nload cn400\nm 5.6 125\n4 125\nunload\ny\n" | /opt/takeup/bin/takeup line &&
        test -s ~/.local/share/takeup/exports/R0001.json && /opt/takeup/bin/takeup roll 1 && /opt/takeup/bin/takeup check'
fi

expect "the first block builds takeup and opens the screen" on_a_terminal "choose" 'quit\r' bash -c "$(block 1)"
expect "the second block is the tests" grep -qx 'mvn -q verify' <(block 2)
if [[ ${2:-} == verify ]]; then
    expect "it runs to its end" as_newcomer bash -e -c "$(block 2)"
fi
expect "the demo opens, and quit leaves it" on_a_terminal "leaves the tour" '\003\003' target/takeup/bin/takeup demo
expect "the install block ends well" as_newcomer bash -e -c "$(block 3)"
expect "it says nothing" test ! -s "$scratch/expected"
expect "takeup is there" as_newcomer bash -c '~/.local/bin/takeup --version'
expect "the same block upgrades" as_newcomer bash -e -c "$(block 3)"

bash_line=$(block 5 | sed -n 1p)
printf '%s\n' 'PATH=$HOME/.local/bin:$PATH' "$bash_line" >"$home/.bashrc"
printf '. ~/.bashrc\n' >"$home/.profile"
expect "bash completes it" as_newcomer bash -i -c 'complete -p takeup && takeup completion --words stocks | grep -q cn400'
expect "a login shell starts without a word" test -z "$(as_newcomer bash -l -c true 2>&1)"
if has zsh; then
    printf '%s\n' 'autoload -U compinit && compinit -u' "$(block 5 | sed -n 2p)" >"$home/.zshrc"
    expect "zsh completes it" as_newcomer zsh -i -c 'test -n "${_comps[takeup]}"'
fi
if has fish; then
    expect "the line for fish makes its file" as_newcomer bash -e -c \
        "$(block 5 | sed -n 3p); test -s ~/.config/fish/completions/takeup.fish"
fi

block 6 | sed 's/   *[a-z].*//' >"$checkout/roll.txt"
expect "the first roll is five lines" test "$(wc -l <"$checkout/roll.txt")" -eq 5
echo y >>"$checkout/roll.txt"    # frames are left, and it is asked
expect "each is done" as_newcomer bash -c '~/.local/bin/takeup line < roll.txt; test -s ~/.local/share/takeup/exports/R0001.json'
expect "all is in order" as_newcomer bash -c '~/.local/bin/takeup check'
expect "without a terminal a sentence says so" as_newcomer bash -c '~/.local/bin/takeup; test $? -eq 2'

expect "the uninstall block ends well" as_newcomer bash -e -c "$(block 4)"
expect "takeup is gone" as_newcomer bash -c '! test -L ~/.local/bin/takeup && ! test -e ~/.local/opt/takeup'
expect "the roll is still there" test -s "$home/.local/share/takeup/exports/R0001.json"
expect "a shell that is left with the line starts without a word" test -z "$(as_newcomer bash -l -c true 2>&1)"

((failures == 0)) && echo "newcomer: all went well"
exit "$((failures > 0))"
