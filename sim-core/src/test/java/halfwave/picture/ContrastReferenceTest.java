package halfwave.picture;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.awt.Color;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Contrast of everything that has to be read or seen, computed from the colours.
 *
 * <p>Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2: relative luminance and contrast
 * ratio as defined there; success criteria 1.4.3 (text, 4.5:1) and 1.4.11 (controls and graphics,
 * 3:1).
 */
@Validated(Area.DISPLAY)
class ContrastReferenceTest {

  private static final Reference GUIDE =
      Reference.seen("Web Content Accessibility Guidelines (WCAG) 2.2, relative luminance");
  private static final double TEXT = 4.5;
  private static final double GRAPHIC = 3;

  static Stream<Palette> palettes() {
    return Stream.of(
        Palette.LIGHT, Palette.DARK, Palette.LIGHT.projected(), Palette.DARK.projected());
  }

  /** WCAG 2.2, relative luminance; the threshold 0.04045 is the corrected one of the erratum. */
  private static double luminance(Color color) {
    double[] linear = new double[3];
    int[] parts = {color.getRed(), color.getGreen(), color.getBlue()};
    for (int k = 0; k < 3; k++) {
      double c = parts[k] / 255.0;
      linear[k] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }

  private static double contrast(Color a, Color b) {
    double la = luminance(a);
    double lb = luminance(b);
    return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
  }

  /** Black on white is 21:1 by definition, and a colour on itself 1:1. */
  @Test
  void theFormulaGivesTheEndsOfTheScale() {
    GUIDE
        .check("contrast of black on white", Unit.RATIO, contrast(Color.BLACK, Color.WHITE))
        .isCloseTo(21, 0, "by definition");
    GUIDE
        .check("contrast of a colour on itself", Unit.RATIO, contrast(Color.RED, Color.RED))
        .isCloseTo(1, 0, "by definition");
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void wordsCanBeRead(Palette p) {
    for (Color under : List.of(p.sheet(), p.ground())) {
      Map.of(
              "ink", p.ink(),
              "soft ink", p.softInk(),
              "accent", p.accent(),
              "attention", p.attention(),
              "danger", p.danger())
          .forEach((name, colour) -> words(name, p, contrast(colour, under)));
    }
    // what is selected is written in the colour of the sheet
    words("selected", p, contrast(p.sheet(), p.accent()));
  }

  private static void words(String name, Palette p, double contrast) {
    GUIDE
        .check("contrast of words", Unit.RATIO, contrast)
        .at(name + on(p))
        .isAtLeast(TEXT, "criterion 1.4.3");
  }

  private static void graphics(String name, Palette p, double contrast) {
    GUIDE
        .check("contrast of controls and curves", Unit.RATIO, contrast)
        .at(name + on(p))
        .isAtLeast(GRAPHIC, "criterion 1.4.11");
  }

  private static String on(Palette p) {
    return p.dark() ? ", dark" : ", light";
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void controlsAndCurvesCanBeSeen(Palette p) {
    Map.of(
            "border", p.border(),
            "volts", p.volts(),
            "microamps", p.microamps(),
            "accent", p.accent())
        .forEach((name, colour) -> graphics(name, p, contrast(colour, p.sheet())));
    graphics("red lead", p, contrast(p.redLead(), p.sheet()));
    graphics("black lead", p, contrast(p.blackLead(), p.sheet()));
  }
}
