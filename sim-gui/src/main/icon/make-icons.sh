#!/usr/bin/env bash
# Draws the icon of the program in every size that is shipped (rsvg-convert of librsvg2-bin).
set -euo pipefail
cd "$(dirname "$0")"
to=../resources/halfwave/gui/swing
mkdir -p "$to"
for size in 16 32 48 128 256 512; do
  rsvg-convert -w "$size" -h "$size" halfwave.svg -o "$to/icon-$size.png"
done
