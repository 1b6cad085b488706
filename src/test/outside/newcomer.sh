#!/usr/bin/env bash
# Plays a newcomer: a fresh home without any settings or LANG, and the README's blocks run in their order as they stand.
# What each block says and leaves behind is checked. Needs bash, python3, git and a Maven cache; goes on no network.
#
#   newcomer.sh    in the top folder of the project; mvn -q verify, the second block, is left to who calls this
set -euo pipefail
project=$PWD
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
as_newcomer() {
    (cd "$scratch/takeup" && env -i HOME="$scratch/home" PATH="$scratch/tools:/usr/local/bin:/usr/bin:/bin" \
        TERM=xterm-256color USER=newcomer SHELL=/bin/bash "$@" </dev/null)
}

# The same on a terminal, where keys are typed after some words were seen: the words, the keys.
on_a_terminal() {
    local seen=$1 keys=$2
    shift 2
    # Each waits up to 20 s, and no longer than until the words are there.
    printf '%ssee %s\nbytes %s\npause 5000\n' "$(yes "see $seen" | head -n 15 || true)
" "$seen" "$(printf "$keys" | od -An -tx1 | tr -d ' \n')" |
        (cd "$scratch/takeup" && env -i HOME="$scratch/home" PATH="$scratch/tools:/usr/local/bin:/usr/bin:/bin" \
            TERM=xterm-256color USER=newcomer python3 "$outside/manners.py" 80x24 "$@") >"$scratch/terminal" 2>&1
    tail -c 300 "$scratch/terminal"
    grep -aqF "$seen" <(grep -av 'waited in vain' "$scratch/terminal") && [[ $(tail -n 1 "$scratch/terminal") == "status 0" ]]
}

mkdir -p "$scratch/home" "$scratch/tools" "$scratch/takeup"
git ls-files -z | xargs -0 tar cf - | tar xf - -C "$scratch/takeup"
# The Maven cache of whoever runs this, so that nothing is fetched; all else of mvn is as the newcomer has it.
cache=$(printf '%s' "${MAVEN_CACHE:-$HOME/.m2/repository}")
printf '#!/bin/sh\nexec %s -o -Dmaven.repo.local=%s "$@"\n' "$(command -v mvn)" "$cache" >"$scratch/tools/mvn"
chmod +x "$scratch/tools/mvn"

expect "the first block builds takeup and opens the screen" on_a_terminal "choose" 'quit\r' bash -c "$(block 1)"
expect "the second block is the tests" grep -qx 'mvn -q verify' <(block 2)
expect "the demo opens, and quit leaves it" on_a_terminal "leaves the tour" '\003\003' target/takeup/bin/takeup demo
expect "the install block ends well" as_newcomer bash -e -c "$(block 3)"
expect "it says nothing" test ! -s "$scratch/expected"
expect "takeup is there" as_newcomer bash -c '~/.local/bin/takeup --version'
expect "the same block upgrades" as_newcomer bash -e -c "$(block 3)"

bash_line=$(block 5 | sed -n 1p)
printf '%s\n' 'PATH=$HOME/.local/bin:$PATH' "$bash_line" >"$scratch/home/.bashrc"
printf '. ~/.bashrc\n' >"$scratch/home/.profile"
expect "bash completes it" as_newcomer bash -i -c 'complete -p takeup && takeup completion --words stocks | grep -q cn400'
expect "a login shell starts without a word" test -z "$(as_newcomer bash -l -c true 2>&1)"
if command -v zsh >/dev/null; then
    printf '%s\n' 'autoload -U compinit && compinit -u' "$(block 5 | sed -n 2p)" >"$scratch/home/.zshrc"
    expect "zsh completes it" as_newcomer zsh -i -c 'test -n "${_comps[takeup]}"'
fi
if command -v fish >/dev/null; then
    expect "the line for fish makes its file" as_newcomer bash -e -c \
        "$(block 5 | sed -n 3p); test -s ~/.config/fish/completions/takeup.fish"
fi

block 6 | sed 's/   *[a-z].*//' >"$scratch/takeup/roll.txt"
expect "the first roll is five lines" test "$(wc -l <"$scratch/takeup/roll.txt")" -eq 5
echo y >>"$scratch/takeup/roll.txt"    # frames are left, and it is asked
expect "each is done" as_newcomer bash -c '~/.local/bin/takeup line < roll.txt; test -s ~/.local/share/takeup/exports/R0001.json'
expect "all is in order" as_newcomer bash -c '~/.local/bin/takeup check'
expect "without a terminal a sentence says so" as_newcomer bash -c '~/.local/bin/takeup; test $? -eq 2'

expect "the uninstall block ends well" as_newcomer bash -e -c "$(block 4)"
expect "takeup is gone" test ! -e "$scratch/home/.local/bin/takeup" -a ! -e "$scratch/home/.local/opt/takeup"
expect "the roll is still there" test -s "$scratch/home/.local/share/takeup/exports/R0001.json"
expect "a shell that is left with the line starts without a word" test -z "$(as_newcomer bash -l -c true 2>&1)"

((failures == 0)) && echo "newcomer: all went well"
exit "$((failures > 0))"
