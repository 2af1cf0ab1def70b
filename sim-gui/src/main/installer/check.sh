#!/usr/bin/env bash
# What a newcomer and a classroom do, from nothing: a clean clone, the two commands of the readme, the notebook command, and the
# package made, installed, started on a virtual display and removed. Needs a JDK, Maven, the packages that .ci/run
# installs, and for the package Debian, root and xwininfo (x11-utils).
set -euo pipefail
cd "$(dirname "$0")/../../../.."

say() { printf 'check: %s\n' "$*"; }
die() { printf 'check: FAILED: %s\n' "$*" >&2; exit 1; }

work=$(mktemp -d)
display=("xvfb-run" "-a" "-s" "-screen 0 1600x1000x24")
trap 'rm -rf "$work"' EXIT

log="$PWD/sim-gui/target/check.log"
mkdir -p "${log%/*}"

say "a clean clone"
git clone -q . "$work/halfwave"
cd "$work/halfwave"

say "the first command: build and start"
mvn -q -DskipTests package
page=$(env -u DISPLAY java -jar sim-gui/target/halfwave.jar)
[[ $page == *"Readings"* ]] || die "the first page shows no readings"

say "the notebook command"
java -jar notebooks/target/halfwave-notebooks.jar --to "$work/jupyter"
JUPYTER_PATH="$work/jupyter" /usr/bin/jupyter nbconvert --to notebook --execute --output-dir "$work" \
  --ExecutePreprocessor.startup_timeout=60 notebooks/01-*.ipynb 2>"$work/notebook.log" || die "$(tail -3 "$work/notebook.log")"

say "the package"
"${display[@]}" java sim-gui/src/main/installer/Installers.java
package=$(ls "$PWD"/sim-gui/target/installers/*.deb)
apt-get install -y -qq --no-install-recommends "$package" >"$work/install.log" 2>&1 || die "$(tail -3 "$work/install.log")"
[ -s /opt/halfwave/lib/app/halfwave.jsa ] || die "no archive of classes was made"
[ "$(halfwave benches | wc -l)" -ge 8 ] || die "the installed command does not list the benches"
halfwave benches hot-surface-propane --write "$work/propane.halfwave"
# for as long as a start takes; the cautions of a first start, which wait for a person, are seen
mkdir -p "$work/config/halfwave"
echo '{"cautionsSeen": true}' >"$work/config/halfwave/settings.json"
export work
XDG_CONFIG_HOME="$work/config" "${display[@]}" bash -c '
  halfwave "$work/propane.halfwave" & program=$!
  for second in $(seq 90); do
    sleep 1
    if xwininfo -root -tree | grep -q "propane"; then kill $program; exit 0; fi
  done
  kill $program; exit 1' || die "the installed program showed no window with the file it was given"
apt-get remove -y -qq halfwave >"$work/remove.log" 2>&1 || die "$(tail -3 "$work/remove.log")"
[ ! -e /opt/halfwave ] && [ ! -e /usr/bin/halfwave ] && [ ! -e /usr/share/applications/halfwave.desktop ] ||
  die "something was left after the removal"

if [ "${1:-}" != "--quick" ]; then
  say "the second command: every check"
  "${display[@]}" mvn -B -ntp verify >"$log" || die "$(grep -E 'ERROR|FAIL' "$log" | head -5)
the whole of it: $log"
fi
say "passed"
