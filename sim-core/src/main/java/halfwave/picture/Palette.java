package halfwave.picture;

import java.awt.Color;

/**
 * The colours of everything that is drawn, by what they stand for. There is one accent; flame, ions
 * and curves are the only other things with a colour of their own.
 *
 * @param dark whether ink is brighter than the ground
 * @param ground the window
 * @param sheet panels and paper
 * @param ink lines and words
 * @param softInk secondary words
 * @param hairline axes and borders that only divide
 * @param border borders of what can be operated, 3:1 against the sheet
 * @param accent what can be operated, what is selected, now
 * @param attention what deserves attention; always beside a sign and a word
 * @param danger what is dangerous; always beside a sign and a word
 * @param volts voltage curves
 * @param microamps current curves
 * @param flameCone inner cone of a flame
 * @param flameMantle its mantle
 * @param ions ion density, by opacity
 * @param metal metal parts
 * @param ceramic ceramic parts
 * @param redLead the red test lead
 * @param blackLead the black test lead; black on slate cannot be seen, it is gray there
 */
public record Palette(
    boolean dark,
    Color ground,
    Color sheet,
    Color ink,
    Color softInk,
    Color hairline,
    Color border,
    Color accent,
    Color attention,
    Color danger,
    Color volts,
    Color microamps,
    Color flameCone,
    Color flameMantle,
    Color ions,
    Color metal,
    Color ceramic,
    Color redLead,
    Color blackLead) {

  /** Ink on paper. */
  public static final Palette LIGHT =
      new Palette(
          false,
          new Color(0xF4F1EA),
          new Color(0xFBFAF6),
          new Color(0x1F2A33),
          new Color(0x5A6670),
          new Color(0xCFC8BA),
          new Color(0x8A8577),
          new Color(0x0B6E69),
          new Color(0x7A5C00),
          new Color(0x9B2226),
          new Color(0x2F5D8A),
          new Color(0xB4530A),
          new Color(0x3E7CC4),
          new Color(0x8DBBEA),
          new Color(0x6B3FA0),
          new Color(0xB9BDBF),
          new Color(0xFFFFFF),
          new Color(0xB3202A),
          new Color(0x1A1A1A));

  /** Chalk on slate. */
  public static final Palette DARK =
      new Palette(
          true,
          new Color(0x12171B),
          new Color(0x1A2126),
          new Color(0xE8E3D8),
          new Color(0x9AA5AD),
          new Color(0x36414A),
          new Color(0x76838D),
          new Color(0x5FBDB4),
          new Color(0xE0C24A),
          new Color(0xF28B82),
          new Color(0x8DB7E0),
          new Color(0xF0A15B),
          new Color(0x4F8FDA),
          new Color(0x7FB2EA),
          new Color(0xB79AE6),
          new Color(0x7D878E),
          new Color(0xD9DCDD),
          new Color(0xE5484D),
          new Color(0x9AA5AD));

  /** Ink on white: a printer has no ground to put under it. */
  public static final Palette PAPER =
      LIGHT.with(Color.WHITE, Color.WHITE, LIGHT.softInk, LIGHT.hairline, LIGHT.border);

  /** The same on slides: no soft ink, which a projector washes out. */
  public Palette projected() {
    return with(ground, sheet, ink, softInk, ink);
  }

  private Palette with(
      Color otherGround,
      Color otherSheet,
      Color otherSoftInk,
      Color otherHairline,
      Color otherBorder) {
    return new Palette(
        dark,
        otherGround,
        otherSheet,
        ink,
        otherSoftInk,
        otherHairline,
        otherBorder,
        accent,
        attention,
        danger,
        volts,
        microamps,
        flameCone,
        flameMantle,
        ions,
        metal,
        ceramic,
        redLead,
        blackLead);
  }
}
