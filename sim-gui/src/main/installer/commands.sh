#!/usr/bin/env bash
# Every command to Maven in the documents, as it stands there, in a clean clone. All of them take hours: those that fit the
# pattern that is given are left out. Needs what .ci/run installs.
set -euo pipefail
cd "$(dirname "$0")/../../../.."

say() { printf 'commands: %s\n' "$*"; }

left=${1:-^$}
# DocumentsTest finds commands by the same pattern
mapfile -t commands < <(git ls-files -z '*.md' | xargs -0 grep -ohE '\bmvn( [-A-Za-z0-9_.:=#,/]+)+' | sort -ru)

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
git clone -q . "$work/halfwave"
cd "$work/halfwave"
mvn -q -DskipTests package

failed=0
for command in "${commands[@]}"; do
  if [[ $command =~ $left ]]; then
    say "left out  $command"
    continue
  fi
  SECONDS=0
  # shellcheck disable=SC2086 # a command is its words
  if xvfb-run -a -s "-screen 0 2560x1600x24" $command >"$work/log" 2>&1 </dev/null; then
    say "$SECONDS s  $command"
  else
    say "FAILED after $SECONDS s  $command"
    tail -5 "$work/log"
    failed=1
  fi
done
exit $failed
