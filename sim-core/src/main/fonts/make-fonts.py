#!/usr/bin/env python3
"""Makes the two fonts of pictures and pages from an open font under the SIL Open Font License.

    python3 make-fonts.py REGULAR.otf SEMIBOLD.otf OUTPUT_FOLDER

Needs fontTools (MIT). The sources are Inter-Regular.otf and Inter-SemiBold.otf of the Maven artifact
com.formdev:flatlaf-fonts-inter:4.1. What is changed, and why:
 - outlines from cubic to quadratic (glyf instead of CFF): PDF embedding wants TrueType;
 - figures of equal width take the place of the usual ones, so that columns of numbers line up;
 - only the letters that sentences and units need, no layout tables: what is drawn, embedded in a PDF
   and measured is then the same to the last bit;
 - other family names, one for each weight: no font that is installed on a machine can take their place.
"""
import os
import sys

from fontTools import subset
from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont, newTable

RANGES = [
    (0x20, 0x7E), (0xA0, 0x17F), (0x2C6, 0x2DD), (0x370, 0x3FF), (0x2000, 0x206F), (0x2070, 0x209F),
    (0x20A0, 0x20BF), (0x2100, 0x214F), (0x2150, 0x218B), (0x2190, 0x21FF), (0x2200, 0x22FF),
    (0x25A0, 0x25FF), (0x2713, 0x2717), (0x1E00, 0x1EFF),
]
FIXED_TIME = 3818448000  # 2025-01-01, in seconds since 1904: the same sources give the same bytes
MAX_ERROR = 0.5  # of 2048 or more units in an em: far below what a printer can show


def tabular(font):
    """Maps the figures to those of equal width, as the feature tnum does."""
    gsub = font["GSUB"].table
    swap = {}
    for record in gsub.FeatureList.FeatureRecord:
        if record.FeatureTag == "tnum":
            for index in record.Feature.LookupListIndex:
                for sub in gsub.LookupList.Lookup[index].SubTable:
                    sub = getattr(sub, "ExtSubTable", sub)
                    swap.update(getattr(sub, "mapping", {}))
    for table in font["cmap"].tables:
        for code in range(0x30, 0x3A):
            if code in table.cmap:
                table.cmap[code] = swap.get(table.cmap[code], table.cmap[code])


def outlines(font):
    """Replaces CFF by glyf."""
    glyphs = font.getGlyphSet()
    order = font.getGlyphOrder()
    made = {}
    for name in order:
        pen = TTGlyphPen(None)
        glyphs[name].draw(Cu2QuPen(pen, MAX_ERROR, reverse_direction=True))
        made[name] = pen.glyph()
    glyf = newTable("glyf")
    glyf.glyphOrder = order
    glyf.glyphs = made
    font["glyf"] = glyf
    font["loca"] = newTable("loca")
    maxp = font["maxp"]
    maxp.tableVersion = 0x00010000
    for field in ("maxTwilightPoints", "maxStorage", "maxFunctionDefs", "maxInstructionDefs",
                  "maxStackElements", "maxSizeOfInstructions", "maxComponentElements",
                  "maxPoints", "maxContours", "maxCompositePoints", "maxCompositeContours",
                  "maxComponentDepth"):
        setattr(maxp, field, 0)
    maxp.maxZones = 1
    del font["CFF "]
    if "VORG" in font:
        del font["VORG"]
    font["head"].glyphDataFormat = 0
    for name in order:
        made[name].recalcBounds(glyf)
        advance = font["hmtx"][name][0]
        font["hmtx"][name] = (advance, getattr(made[name], "xMin", 0) if made[name].numberOfContours else 0)
    post = font["post"]
    post.formatType = 3.0
    font.sfntVersion = "\000\001\000\000"


def named(font, family):
    table = font["name"]
    keep = [n for n in table.names if n.nameID in (0, 13, 14) and n.platformID == 3]
    table.names = keep
    for number, text in ((1, family), (2, "Regular"), (3, family + " 1"), (4, family), (5, "Version 1.000"),
                         (6, family.replace(" ", ""))):
        table.setName(text, number, 3, 1, 0x409)
    font["OS/2"].usWeightClass = 400
    font["OS/2"].fsSelection = 0x40 | (font["OS/2"].fsSelection & 0x80)
    font["head"].macStyle = 0


def make(source, family, target):
    font = TTFont(source, recalcTimestamp=False)
    tabular(font)
    options = subset.Options()
    options.layout_features = []
    options.drop_tables += ["GSUB", "GPOS", "GDEF", "DSIG", "BASE", "STAT", "MVAR"]
    options.hinting = False
    options.name_IDs = ["*"]
    options.notdef_outline = True
    options.glyph_names = True
    tool = subset.Subsetter(options)
    tool.populate(unicodes=[c for low, high in RANGES for c in range(low, high + 1)])
    tool.subset(font)
    outlines(font)
    named(font, family)
    font["head"].created = font["head"].modified = FIXED_TIME
    font.save(target)
    print(target, os.path.getsize(target))


def main():
    regular, strong, folder = sys.argv[1:4]
    make(regular, "Halfwave Sans", os.path.join(folder, "halfwave-sans.ttf"))
    make(strong, "Halfwave Sans Strong", os.path.join(folder, "halfwave-sans-strong.ttf"))


main()
