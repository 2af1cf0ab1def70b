package halfwave.gui.presentation.editor;

import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Knob;
import halfwave.lesson.Claim;
import halfwave.lesson.Reading;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A claim as a person fills it in: what is spoken of, and what is said of it.
 *
 * @param subject what is spoken of
 * @param least lowest number as text, or empty: no bound
 * @param most highest number as text, or empty: no bound
 * @param stage which stage, where one is spoken of
 * @param code what the light says
 */
public record ClaimForm(Subject subject, String least, String most, Stage stage, StatusCode code) {

  /** A number this far off is still called the same (SI): less than anyone reads off a meter. */
  private static final double LEAST_AMPS = 5e-8;

  private static final double LEAST_VOLTS = 0.5;
  private static final double LEAST_OHMS = 1;
  private static final int DIGITS = 3;

  /** Files count no further. */
  private static final int MOST_TIMES = 1000;

  /** What is said. */
  public enum Kind {
    /** A reading lies between two numbers. */
    READING,
    /** A reading over what it was lies between two numbers. */
    SHARE,
    /** The board is in a stage. */
    STAGE,
    /** The status light says something. */
    LIGHT,
    /** A stage is entered so often. */
    ENTERS
  }

  /**
   * What is spoken of.
   *
   * @param kind what is said
   * @param reading of which reading, or null where it is of none
   */
  public record Subject(Kind kind, @Nullable Reading reading) {

    /** In words. */
    public String name(Wording words) {
      String name = reading == null ? "" : ClaimWords.reading(reading, words);
      return switch (kind) {
        case READING -> Wording.capital(name);
        case SHARE -> words.text("claim.share-name", Wording.capital(name));
        case STAGE -> words.text("claim.stage-name");
        case LIGHT -> words.text("claim.light-name");
        case ENTERS -> words.text("claim.enters-name");
      };
    }
  }

  /** What may be spoken of. */
  public static List<Subject> subjects(Found found) {
    List<Subject> subjects = new ArrayList<>();
    found.now().keySet().forEach(r -> subjects.add(new Subject(Kind.READING, r)));
    subjects.add(new Subject(Kind.STAGE, null));
    subjects.add(new Subject(Kind.LIGHT, null));
    found.now().keySet().stream()
        .filter(r -> !(r instanceof Reading.Burners))
        .forEach(r -> subjects.add(new Subject(Kind.SHARE, r)));
    subjects.add(new Subject(Kind.ENTERS, null));
    return subjects;
  }

  /**
   * What the bench shows, with room for a little more and less.
   *
   * @param marginRatio that room over the number (1)
   */
  public static ClaimForm of(Subject subject, Found found, double marginRatio, Wording words) {
    String least = "";
    String most = "";
    if (subject.kind() == Kind.READING) {
      Reading reading = subject.reading();
      Double now = found.now().get(reading);
      if (reading != null && now != null) {
        Dimension dimension = reading.dimension();
        double room = dimension == Dimension.NUMBER ? 0 : room(now, dimension, marginRatio);
        least = bound(now - room, dimension, RoundingMode.FLOOR, words);
        most = bound(now + room, dimension, RoundingMode.CEILING, words);
      }
    } else if (subject.kind() == Kind.SHARE) {
      Double now = found.now().get(subject.reading());
      Double before = found.before().get(subject.reading());
      if (now != null && before != null && before != 0 && Double.isFinite(now / before)) {
        double ratio = now / before;
        double room = Math.max(0.01, Math.abs(ratio) * marginRatio);
        least = bound(Math.max(0, ratio - room), Dimension.RATIO, RoundingMode.FLOOR, words);
        most = bound(Math.max(0, ratio + room), Dimension.RATIO, RoundingMode.CEILING, words);
      }
    } else if (subject.kind() == Kind.ENTERS) {
      Stage entered = found.entered().keySet().stream().findFirst().orElse(found.stage());
      String count = Integer.toString(found.entered().getOrDefault(entered, 1));
      return new ClaimForm(subject, count, count, entered, found.code());
    }
    return new ClaimForm(subject, least, most, found.stage(), found.code());
  }

  private static double room(double now, Dimension dimension, double marginRatio) {
    double least =
        switch (dimension) {
          case CURRENT -> LEAST_AMPS;
          case VOLTAGE -> LEAST_VOLTS;
          default -> LEAST_OHMS;
        };
    return Double.isInfinite(now) ? 0 : Math.max(least, Math.abs(now) * marginRatio);
  }

  private static String bound(double si, Dimension dimension, RoundingMode mode, Wording words) {
    if (Double.isInfinite(si)) {
      return dimension == Dimension.RESISTANCE
          ? ClaimWords.value(new Quantity(si, dimension), words)
          : "";
    }
    double round = new BigDecimal(si).round(new MathContext(DIGITS, mode)).doubleValue();
    return dimension == Dimension.RATIO
        ? ClaimWords.share(round, words)
        : ClaimWords.value(new Quantity(round, dimension), words);
  }

  /** A claim that was made before. */
  public static ClaimForm of(Claim claim, Found found, Wording words) {
    ClaimForm plain =
        new ClaimForm(new Subject(Kind.STAGE, null), "", "", found.stage(), found.code());
    if (claim instanceof Claim.Between between) {
      Quantity least = between.least();
      Quantity most = between.most();
      return plain
          .with(new Subject(Kind.READING, between.reading()))
          .with(
              least == null ? "" : ClaimWords.value(least, words),
              most == null ? "" : ClaimWords.value(most, words));
    } else if (claim instanceof Claim.Compared compared) {
      return plain
          .with(new Subject(Kind.SHARE, compared.reading()))
          .with(
              compared.leastRatio() == 0 ? "" : ClaimWords.share(compared.leastRatio(), words),
              Double.isInfinite(compared.mostRatio())
                  ? ""
                  : ClaimWords.share(compared.mostRatio(), words));
    } else if (claim instanceof Claim.Shows shows) {
      return plain.with(new Subject(Kind.LIGHT, null)).with(shows.code());
    } else if (claim instanceof Claim.Enters enters) {
      String most = enters.mostCount() == Integer.MAX_VALUE ? "" : "" + enters.mostCount();
      return plain
          .with(new Subject(Kind.ENTERS, null))
          .with("" + enters.leastCount(), most)
          .with(enters.stage());
    }
    return plain.with(((Claim.At) claim).stage());
  }

  ClaimForm with(Subject other) {
    return new ClaimForm(other, least, most, stage, code);
  }

  /** With other numbers. */
  public ClaimForm with(String otherLeast, String otherMost) {
    return new ClaimForm(subject, otherLeast, otherMost, stage, code);
  }

  /** With another stage. */
  public ClaimForm with(Stage other) {
    return new ClaimForm(subject, least, most, other, code);
  }

  /** With another light. */
  public ClaimForm with(StatusCode other) {
    return new ClaimForm(subject, least, most, stage, other);
  }

  /** The claim; nothing where what was filled in says nothing. */
  public Optional<Claim> claim(Wording words) {
    try {
      return switch (subject.kind()) {
        case STAGE -> Optional.of(new Claim.At(stage));
        case LIGHT -> Optional.of(new Claim.Shows(code));
        case ENTERS ->
            Optional.of(new Claim.Enters(stage, count(least, 0), count(most, Integer.MAX_VALUE)));
        case READING, SHARE ->
            subject.reading() == null ? Optional.empty() : ofReading(subject.reading(), words);
      };
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Where the bundle keeps what is to be said about whether a claim is so just now. */
  public static String truth(Claim claim, Found found) {
    return found
        .holds(claim)
        .map(so -> so ? "claim.so-now" : "claim.not-so-now")
        .orElse("claim.unknown-now");
  }

  private Optional<Claim> ofReading(Reading reading, Wording words) {
    if (subject.kind() == Kind.SHARE) {
      return least.isBlank() && most.isBlank()
          ? Optional.empty()
          : Optional.of(
              new Claim.Compared(
                  reading,
                  number(least, Dimension.RATIO, words).orElse(0),
                  number(most, Dimension.RATIO, words).orElse(Double.POSITIVE_INFINITY)));
    }
    return Optional.of(
        new Claim.Between(
            reading, quantity(least, reading, words), quantity(most, reading, words)));
  }

  private static @Nullable Quantity quantity(String text, Reading reading, Wording words) {
    OptionalDouble si = number(text, reading.dimension(), words);
    return si.isPresent() ? new Quantity(si.getAsDouble(), reading.dimension()) : null;
  }

  /** Nothing where nothing is typed; a refusal where it is no number. */
  private static OptionalDouble number(String text, Dimension dimension, Wording words) {
    if (text.isBlank()) {
      return OptionalDouble.empty();
    }
    OptionalDouble si = Knob.read(text, dimension, words);
    if (si.isEmpty()) {
      throw new IllegalArgumentException("text = " + text + ": a number");
    }
    return si;
  }

  private static int count(String text, int fallback) {
    int count = text.isBlank() ? fallback : Integer.parseInt(text.strip());
    if (!text.isBlank() && !(count >= 0 && count <= MOST_TIMES)) {
      throw new IllegalArgumentException("count = " + count + ": zero to " + MOST_TIMES);
    }
    return count;
  }
}
