#!/bin/sh
# Puts trayledger under a prefix: ./install.sh [PREFIX], otherwise /usr/local. --uninstall [PREFIX] takes it away again.
# DESTDIR is put before the prefix. A ledger is never touched.
set -eu

here=$(cd "$(dirname "$0")" && pwd)
remove=
if [ "${1:-}" = --uninstall ]; then
    remove=yes
    shift
fi
case ${1:-} in
    -*)
        echo "install.sh [--uninstall] [PREFIX]" >&2
        exit 2
        ;;
esac
prefix=${DESTDIR:-}${1:-/usr/local}

files() { (cd "$here" && find bin share -type f); }

if [ "$remove" ]; then
    files | while read -r file; do rm -f "$prefix/$file"; done
    rmdir "$prefix/share/doc/trayledger" 2>/dev/null || :
    echo "trayledger is gone from $prefix; your ledger is where it was"
    exit
fi

if ! mkdir -p "$prefix/bin" 2>/dev/null || [ ! -w "$prefix/bin" ]; then
    echo "$prefix cannot be written to: run this with sudo, or name a prefix of your own, such as ./install.sh ~/.local" >&2
    exit 1
fi
files | while read -r file; do
    mkdir -p "$prefix/$(dirname "$file")"
    mode=644
    [ "${file%%/*}" = share ] || mode=755
    # Not written over a file that runs: a new file takes its place.
    cp "$here/$file" "$prefix/$file.new"
    chmod "$mode" "$prefix/$file.new"
    mv -f "$prefix/$file.new" "$prefix/$file"
done
echo "trayledger is in $prefix/bin; to look around: $prefix/bin/trayledger demo"
