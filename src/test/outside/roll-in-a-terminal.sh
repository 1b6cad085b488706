#!/usr/bin/env bash
# One whole roll typed into the real screen, in a terminal of its own: roll-in-a-terminal.sh PROGRAM
# Then the same words through PROGRAM line; both must hand over the same rolls but for the times. Then what hands do to a
# terminal: a key that is held, a paste, windows of all sizes, an end from outside. Needs tmux and python3.
set -euo pipefail

program=$(readlink -f -- "${1:?roll-in-a-terminal.sh PROGRAM}")
words=$(dirname -- "$(readlink -f -- "${BASH_SOURCE[0]}")")/roll.txt
export LC_ALL=C.UTF-8
unset TMUX NO_COLOR

place=$(mktemp -d)
tmux=(tmux -u -S "$place/socket" -f /dev/null)
trap '"${tmux[@]}" kill-server 2>/dev/null || true; rm -rf -- "$place"' EXIT
trap 'exit 1' INT TERM

screen() {
    "${tmux[@]}" capture-pane -p -J -t roll
}

fail() {
    echo "roll-in-a-terminal: $1"
    echo "the screen:"
    screen | sed 's/^/    /' || true
    exit 1
}

# Up to 20 s for a condition; a machine that is busy may be slow, and is not wrong for it.
await() {
    local what=$1 until=$((SECONDS + 20))
    shift
    until "$@"; do
        ((SECONDS < until)) || fail "waited in vain for: $what"
        sleep 0.05
    done
}

shows() {
    [[ $(screen) == *"$1"* ]]
}

hides() {
    ! shows "$1"
}

see() {
    await "$1" shows "$1"
}

key() {
    "${tmux[@]}" send-keys -t roll "$@"
}

typed() {
    "${tmux[@]}" send-keys -t roll -l -- "$1"
}

enter() {
    typed "$1"
    key Enter
}

alive() {
    kill -0 "$(<"$place/pid")" 2>/dev/null
}

on_main_screen() {
    [[ $("${tmux[@]}" display-message -p -t roll '#{alternate_on}') == 0 ]]
}

# Starts the screen in the pane, and leaves behind its process, its exit status, and the terminal's modes before and after.
start() {
    rm -f "$place"/{pid,status,before,after,bytes}
    "${tmux[@]}" pipe-pane -t roll "cat >> '$place/bytes'"
    enter "sh '$place/run' '$1'"
    await "the screen" test -s "$place/pid"
    await "the other screen" shows "$2"
    on_main_screen && fail "the screen was drawn on the shell's own lines"
    return 0
}

ended() {
    await "the end of the program" test -s "$place/after"
    await "the main screen" on_main_screen
    [[ $(<"$place/status") == "$1" ]] || fail "exit status $(<"$place/status"), not $1"
    [[ $(<"$place/before") == "$(<"$place/after")" ]] || fail "stty -g was $(<"$place/before") and is $(<"$place/after")"
    [[ $("${tmux[@]}" display-message -p -t roll '#{cursor_flag}') == 1 ]] || fail "the cursor is hidden"
    shows "what stood here before" || fail "the shell's own lines are gone"
    "${tmux[@]}" pipe-pane -t roll
    local mode
    for mode in 1049 2004; do
        [[ $(grep -ao $'\e''\[?'"$mode[hl]" "$place/bytes" | tail -n 1) == *l ]] || fail "mode $mode was left on"
    done
}

cat > "$place/run" <<RUN
stty -g > "$place/before"
sh -c 'echo \$\$ > "$place/pid"; exec "\$0" --data "\$1"' "$program" "\$1"
echo \$? > "$place/status"
stty -g > "$place/after"
RUN

"${tmux[@]}" new-session -d -s roll -x 80 -y 24 "env -u ENV PS1='shell> ' sh"
see "shell>"
enter "echo what stood here before"

echo "a roll on the screen"
start "$place/screen" "First roll, 1 of 4"
: > "$place/lines"
steps=0
while IFS='|' read -r left right; do
    [[ -z $left || $left == \#* ]] && continue
    read -r left <<< "$left"
    read -r right <<< "$right"
    if [[ $left =~ ^(Space|Tab|BTab|Up|Down|Enter|Escape|F1|F2|F3|C-z|C-y)\ =\ ?(.*)$ ]]; then
        [[ ${BASH_REMATCH[1]} == Space ]] && sleep 0.1
        key "${BASH_REMATCH[1]}"
        line=${BASH_REMATCH[2]}
    elif [[ $left == und ]]; then
        typed "$left"
        line=
    else
        enter "$left"
        line=$left
    fi
    [[ -n $line ]] && echo "$line" >> "$place/lines"
    see "$right"
    steps=$((steps + 1))
done < "$words"
((steps > 60)) || fail "only $steps steps were read from $words"
enter "quit"
ended 0
shows "takeup: saved in $place/screen" || fail "no farewell"

echo "the same words in a pipe"
"$program" --data "$place/pipe" line < "$place/lines" > "$place/answers" || fail "a line was refused: $(grep -n '^Not done' "$place/answers")"
python3 - "$place" <<'COMPARE' || fail "the two folders hand over different rolls"
import json, pathlib, sys

# Ids are made from records, and a record holds its time.
TIMES = {"at", "since", "loadedAt", "finishedAt", "madeBy", "date", "id", "folder"}

def timeless(value):
    if isinstance(value, dict):
        return {k: timeless(v) for k, v in value.items() if k not in TIMES}
    return [timeless(v) for v in value] if isinstance(value, list) else value

def rolls(folder):
    return {p.name: timeless(json.loads(p.read_text("utf-8"))) for p in sorted(pathlib.Path(folder, "exports").iterdir())}

def differences(a, b, where):
    if isinstance(a, dict) and isinstance(b, dict):
        return [d for k in sorted(a.keys() | b.keys()) for d in differences(a.get(k, "nothing"), b.get(k, "nothing"), f"{where}.{k}")]
    if isinstance(a, list) and isinstance(b, list) and len(a) == len(b):
        return [d for i, (x, y) in enumerate(zip(a, b)) for d in differences(x, y, f"{where}[{i}]")]
    return [] if a == b else [f"{where}: on the screen {a}, in the pipe {b}"]

screen, pipe = rolls(sys.argv[1] + "/screen"), rolls(sys.argv[1] + "/pipe")
found = differences(screen, pipe, "exports")
print("\n".join(found[:20]), end="\n" if found else "")
whole = list(screen) == ["R0001.json", "R0002.json"] and len(screen["R0001.json"]["frames"]) > 30
sys.exit(0 if whole and not found else 1)
COMPARE

echo "a held key, a paste, other sizes"
start "$place/screen" "No film in 645 back 1"
enter "load cn400 frames 9"
see "R0003 in 645 back 1"
enter "4 125"
see "Frame 1 on R0003"
key -N 25 Space
see "> x"
held=$(screen | sed -n 's/^> x\([0-9]*\).*/\1/p')
((held >= 2 && held <= 25)) || fail "25 held blanks became x$held"
key Escape
await "an empty prompt" hides "> x"
# A machine that stops for 60 ms after the first blank may take that one for a key of its own; no more than that one.
if shows "7 left"; then
    key C-z
fi
see "8 left"
hides "Frame 3 on R0003" || fail "a held key logged"

printf '2.8 250 ; one\n4 250 ; two\n; three' | "${tmux[@]}" load-buffer -
"${tmux[@]}" paste-buffer -p -t roll
see "one"
sleep 0.3
see "8 left"
hides "Frame 2 on R0003" || fail "a paste ran before Enter"
key Enter
see "Note on frame 3 of R0003: two; three"
see "6 left"

enter "say"
see "Next frame 4, 6 left"
before=$(screen | sed 's/[0-9][0-9]:[0-9][0-9]$//')
same() {
    [[ $(screen | sed 's/[0-9][0-9]:[0-9][0-9]$//') == "$before" ]]
}
for size in 40x12 120x40 8x3 20x5 1x1 200x60 80x3 80x24; do
    "${tmux[@]}" resize-window -t roll -x "${size%x*}" -y "${size#*x}"
    case $size in
        40x12 | 120x40 | 200x60) see "6 left" ;;
        80x24) await "the picture from before" same ;;
        *) sleep 0.2 ;;
    esac
    alive || fail "$size ended the program"
done

echo "an end from outside"
kill -TERM "$(<"$place/pid")"
ended 143
"$program" --data "$place/screen" check > "$place/checked" || fail "check: $(<"$place/checked")"

echo "$steps steps on the screen, the same as in the pipe; the terminal came back as it was"
