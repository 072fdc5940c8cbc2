#!/bin/sh
# Pictures of all screens in a real xterm under Xvfb, to be looked at: light and dark, 80x24 and 120x40, on the demo year.
# Needs Xvfb, xterm, xwd, tmux (through which the keys are sent) and python3.
#
#   tests/pictures/screens.sh BINARY FOLDER
#
# BINARY is the published trayledger (dotnet publish src/Ledger.App -c Release -o artifacts/publish); FOLDER gets the pictures.
set -eu

binary=$1
folder=$2
here=$(dirname "$0")
mkdir -p "$folder"
room=$(mktemp -d)
display=:$((90 + $$ % 100))
socket=$room/tmux
Xvfb "$display" -screen 0 1400x900x24 >"$room/xvfb.log" 2>&1 &
xvfb=$!
trap 'tmux -S "$socket" kill-server 2>/dev/null || :; kill "$xvfb" 2>/dev/null || :; rm -rf "$room"' EXIT
export DISPLAY="$display" LANG=C.UTF-8 LC_ALL=C.UTF-8
sleep 1

"$binary" demo --into "$room/year.db" --no-ui >/dev/null

# A name, and the keys that lead there from Today.
screens='today:
shelf:2
boxes:2 Enter
baths:3
sessions:4
sheets:4 Enter
costs:5
journal:6
holders:7
reorder:8
file:9
plan:p
settings:F2 settings Enter
help:F1
actions:F2
session-form:s
delivery-form:r
choices:3 t BTab f
whole-row:2 z
snooze:q
entries:3 j
trace:3 .
at-risk:3 . v
find-a-sheet:F2 find Space a Space sheet Enter
faults:F2 faults Enter
amend:4 e
undo:7 u
copy:2 C-c
find:2 / fen'

picture() {
    theme=$1 width=$2 height=$3 name=$4
    shift 4
    cp "$room/year.db" "$room/ledger.db"
    ground=black ink=white
    if [ "$theme" = light ]; then ground='#fdf6e3' ink=black; fi
    xterm -u8 -T pictured -fa 'DejaVu Sans Mono' -fs 10 -geometry "${width}x${height}+0+0" -bg "$ground" -fg "$ink" -b 0 -e \
        tmux -S "$socket" -f "$here/tmux.conf" new-session "$binary --file $room/ledger.db --theme $theme" &
    xterm=$!
    waited=0
    until tmux -S "$socket" has-session 2>/dev/null || [ $waited = 100 ]; do
        sleep 0.1
        waited=$((waited + 1))
    done
    sleep 0.8
    for key in "$@"; do
        tmux -S "$socket" send-keys "$key"
        sleep 0.3
    done
    sleep 0.4
    xwd -silent -name pictured -out "$room/window.xwd"
    python3 "$here/xwd.py" "$room/window.xwd" "$folder/$name-$theme-${width}x$height.png"
    tmux -S "$socket" kill-server 2>/dev/null || :
    wait "$xterm" 2>/dev/null || :
}

for theme in light dark; do
    for size in '80 24' '120 40'; do
        echo "$screens" | while IFS=: read -r name keys; do
            # shellcheck disable=SC2086
            picture $theme $size "$name" $keys </dev/null
        done
    done
done
ls "$folder" | wc -l
