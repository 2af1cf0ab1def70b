package halfwave.gui.presentation.evidence;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.display.DisplayUnit;
import halfwave.forecast.Calendar;
import halfwave.forecast.FlameLog;
import halfwave.forecast.Logged;
import halfwave.forecast.Question;
import halfwave.forecast.Range;
import halfwave.forecast.Rate;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.io.evidence.LogFile;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A forecast as it is asked for in the window.
 *
 * @param texts what stands in the fields of numbers
 * @param touched whether the rod was touched with bare fingers
 * @param scratches whether a scratched rod is taken to foul faster
 * @param log dated lines, in any order
 */
public record ForecastForm(
    Map<Field, String> texts, boolean touched, boolean scratches, List<LogEntry> log) {

  private static final double HOUR_SECONDS = 3600;

  /** As many digits as anybody would type. */
  private static final MathContext TYPED = new MathContext(4);

  /** Nothing about a rod that fouls as fast with scratches as without. */
  private static final Range NO_FASTER = new Range(1, 1);

  /** A field for a number. */
  public enum Field {
    /** Hours of flame a year. */
    HOURS(DisplayUnit.NONE, LogFile.LEAST_HOURS, LogFile.MOST_HOURS),
    /** Silicon in the air. */
    SILICON(
        DisplayUnit.MICROGRAM_PER_CUBIC_METER, Parameter.SILICON.low(), Parameter.SILICON.high()),
    /** DC that is too little. */
    LIMIT(DisplayUnit.MICROAMP, Logged.Read.LEAST_AMPS, Logged.Read.MOST_AMPS),
    /**
     * How many years are looked at; ten of flame all the time are as many hours as there can be.
     */
    YEARS(DisplayUnit.NONE, 0.5, 10);

    private final DisplayUnit unit;
    private final double least;
    private final double most;

    Field(DisplayUnit unit, double least, double most) {
      this.unit = unit;
      this.least = least;
      this.most = most;
    }

    private OptionalDouble read(String text) {
      return TypedNumber.si(text, unit, least, most);
    }

    private String shown(double si, Wording words) {
      double number = unit.fromSi(si);
      int decimals = new BigDecimal(number).round(TYPED).stripTrailingZeros().scale();
      return words.sentences().quantities().fixed(number, Math.max(0, decimals));
    }

    /** What may be typed, with the unit. */
    public String range(Wording words) {
      return words
          .text("forecast.range", shown(least, words), shown(most, words), unit.symbol())
          .strip();
    }
  }

  /** Takes copies. */
  public ForecastForm {
    texts = Map.copyOf(texts);
    log = List.copyOf(log);
  }

  /** What is usual on the bench that is open. */
  public static ForecastForm usual(State shown, Wording words) {
    Map<Field, String> texts = new EnumMap<>(Field.class);
    usual(shown).forEach((field, si) -> texts.put(field, field.shown(si, words)));
    return new ForecastForm(texts, false, true, List.of());
  }

  private static Map<Field, Double> usual(State shown) {
    double own = Parameter.SILICON.of(MatchModel.start(shown));
    return Map.of(
        Field.HOURS,
        Calendar.USUAL_HOURS,
        Field.SILICON,
        own > 0 ? own : Question.USUAL_SILICON,
        Field.LIMIT,
        shown.moment().settings().sensing().warningAmps(),
        Field.YEARS,
        5.0);
  }

  /** What is wrong in the fields, in words. */
  public Map<Field, String> refusals(Wording words) {
    Map<Field, String> wrong = new EnumMap<>(Field.class);
    for (Field field : Field.values()) {
      if (read(field).isEmpty()) {
        wrong.put(field, field.range(words));
      }
    }
    return wrong;
  }

  private OptionalDouble read(Field field) {
    return field.read(texts.getOrDefault(field, ""));
  }

  private double number(Field field) {
    return read(field).orElseThrow();
  }

  /** The log in hours of flame, or null where it spans more than can be; all fields are right. */
  public @Nullable FlameLog flameLog(LocalDate today) {
    List<LogEntry> sorted = log.stream().sorted(Comparator.comparing(LogEntry::day)).toList();
    LocalDate first = sorted.isEmpty() ? today : sorted.get(0).day();
    Calendar calendar = new Calendar(first, Calendar.burningRatio(number(Field.HOURS)));
    boolean fits =
        sorted.stream().allMatch(e -> calendar.flameSeconds(e.day()) <= Logged.MOST_SECONDS);
    return fits
        ? new FlameLog(sorted.stream().map(e -> e.logged(calendar)).toList(), calendar)
        : null;
  }

  /** What it asks of a bench; all fields are right. */
  public Question question(Bench bench, FlameLog flameLog) {
    return new Question(
        bench,
        flameLog.entries(),
        touched,
        number(Field.SILICON),
        scratches ? Map.of() : Map.of(Rate.SCRATCHES, NO_FASTER),
        number(Field.YEARS) * number(Field.HOURS) * HOUR_SECONDS,
        number(Field.LIMIT),
        Question.USUAL_CONFIDENCE,
        1);
  }
}
