package halfwave.gui.presentation.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.lesson.Claim;
import halfwave.lesson.Reading;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;

/** Claims and readings as sentences. */
public final class ClaimWords {

  private ClaimWords() {}

  /** The claim as a sentence. */
  public static String sentence(Claim claim, Wording words) {
    return Wording.capital(said(claim, words));
  }

  private static String said(Claim claim, Wording words) {
    if (claim instanceof Claim.Between between) {
      return between(between, words);
    } else if (claim instanceof Claim.Compared compared) {
      return compared(compared, words);
    } else if (claim instanceof Claim.At at) {
      return words.text("claim.stage-is", words.sentences().name(at.stage()));
    } else if (claim instanceof Claim.Shows shows) {
      return words.text("claim.light-is", words.sentences().name(shows.code()));
    }
    return enters((Claim.Enters) claim, words);
  }

  private static String between(Claim.Between claim, Wording words) {
    String name = reading(claim.reading(), words);
    Quantity least = claim.least();
    Quantity most = claim.most();
    if (least == null) {
      return words.text("claim.most", name, most == null ? "" : value(most, words));
    } else if (most == null) {
      return words.text("claim.least", name, value(least, words));
    }
    return least.equals(most)
        ? words.text("claim.exactly", name, value(least, words))
        : words.text("claim.between", name, value(least, words), value(most, words));
  }

  private static String compared(Claim.Compared claim, Wording words) {
    String name = reading(claim.reading(), words);
    String least = share(claim.leastRatio(), words);
    if (claim.mostRatio() == Double.POSITIVE_INFINITY) {
      return words.text("claim.share-least", name, least);
    }
    String most = share(claim.mostRatio(), words);
    return claim.leastRatio() == 0
        ? words.text("claim.share-most", name, most)
        : words.text("claim.share", name, least, most);
  }

  private static String enters(Claim.Enters claim, Wording words) {
    String stage = words.sentences().name(claim.stage());
    if (claim.mostCount() == 0) {
      return words.text("claim.never", stage);
    } else if (claim.mostCount() == Integer.MAX_VALUE) {
      return words.text("claim.enters-least", stage, claim.leastCount());
    }
    return claim.leastCount() == claim.mostCount()
        ? words.text("claim.enters", stage, claim.leastCount())
        : words.text("claim.enters-between", stage, claim.leastCount(), claim.mostCount());
  }

  /** What is read. */
  public static String reading(Reading reading, Wording words) {
    if (reading instanceof Reading.Display display) {
      return words.text(
          switch (display.dimension()) {
            case VOLTAGE -> "claim.display-volts";
            case RESISTANCE -> "claim.display-ohms";
            default -> "claim.display-amps";
          });
    } else if (reading instanceof Reading.Metered metered) {
      return words.text(
          "claim.metered",
          words.sentences().name(metered.function()),
          MeterView.place(metered.hookUp(), words));
    }
    return words.text(reading instanceof Reading.Signal ? "claim.signal" : "claim.burners");
  }

  /** A number as a person reads and types it. */
  static String value(Quantity quantity, Wording words) {
    double si = quantity.si();
    boolean whole = quantity.dimension() == Dimension.NUMBER && si == Math.rint(si);
    return whole ? words.sentences().quantities().fixed(si, 0) : words.sentences().text(quantity);
  }

  static String share(double ratio, Wording words) {
    return words.sentences().quantities().text(ratio, Dimension.RATIO);
  }
}
