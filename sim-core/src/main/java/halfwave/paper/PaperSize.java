package halfwave.paper;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The sheets that printers hold. */
public enum PaperSize {
  /** ISO 216. */
  A4(0.210, 0.297),
  /** ANSI/ASME Y14.1, size A: 8.5 by 11 inches. */
  LETTER(0.2159, 0.2794);

  private static final double METERS_PER_POINT = 0.0254 / 72;

  private final double widthMeters;
  private final double heightMeters;

  PaperSize(double widthMeters, double heightMeters) {
    this.widthMeters = widthMeters;
    this.heightMeters = heightMeters;
  }

  /** How a command line spells it. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What people everywhere call it. */
  public String title() {
    return this == LETTER ? "Letter" : name();
  }

  /** The sheet of that spelling. */
  public static Optional<PaperSize> of(String code) {
    return Arrays.stream(values()).filter(size -> size.code().equals(code)).findFirst();
  }

  /** The sheet that offices of a locale's country use; A4 where no country is known. */
  public static PaperSize usual(Locale locale) {
    // the countries of North America, and those that took over their sheets
    return switch (locale.getCountry()) {
      case "US",
          "CA",
          "MX",
          "PR",
          "CL",
          "CO",
          "VE",
          "PH",
          "GT",
          "CR",
          "PA",
          "DO",
          "SV",
          "NI",
          "HN" ->
          LETTER;
      default -> A4;
    };
  }

  /** Width (points). */
  public double widthPoints() {
    return widthMeters / METERS_PER_POINT;
  }

  /** Height (points). */
  public double heightPoints() {
    return heightMeters / METERS_PER_POINT;
  }
}
