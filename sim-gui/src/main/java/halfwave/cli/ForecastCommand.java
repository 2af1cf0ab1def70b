package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.display.QuantityReader;
import halfwave.display.Sentences;
import halfwave.forecast.Calendar;
import halfwave.forecast.FlameLog;
import halfwave.forecast.Forecast;
import halfwave.forecast.Forecasted;
import halfwave.forecast.Forecasting;
import halfwave.forecast.Logged;
import halfwave.forecast.Question;
import halfwave.forecast.Range;
import halfwave.forecast.Rate;
import halfwave.io.AtomicFile;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.io.bench.LumpedCircuitFile;
import halfwave.io.evidence.ForecastCsv;
import halfwave.io.evidence.ForecastJson;
import halfwave.io.evidence.LogFile;
import halfwave.io.evidence.LogWords;
import halfwave.io.evidence.Plausible;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.quantity.RejectedValueException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how the flame signal of a bench fades over hours of flame. */
@Command(name = "forecast")
final class ForecastCommand implements Callable<Integer> {

  private static final String ENTRY = "--entry";
  private static final String LOG = "--log";
  private static final String HOURS = "--hours-per-year";
  private static final String SILICON = "--silicon";
  private static final String RATE = "--rate";
  private static final String AHEAD = "--ahead";
  private static final String LIMIT = "--limit";
  private static final String CONFIDENCE = "--confidence";

  /** Five usual years (s). */
  private static final double USUAL_AHEAD_SECONDS = 5 * Calendar.USUAL_HOURS * 3600;

  private static final Pattern RANGE = Pattern.compile("([^=]+)=([^:]+):([^:]+)");
  private static final String RATE_EXAMPLE = "growth=0.5:2";

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BENCH", descriptionKey = "forecast-bench")
  private @Nullable String bench;

  @Option(names = LOG, paramLabel = "FILE", descriptionKey = "log")
  private @Nullable Path file;

  @Option(names = ENTRY, paramLabel = "\"WHEN WHAT\"", descriptionKey = "log-entry")
  private List<String> entries = new ArrayList<>();

  @Option(names = HOURS, paramLabel = "NUMBER", descriptionKey = "hours-per-year")
  private @Nullable String hours;

  @Option(names = SILICON, paramLabel = "CONTENT", descriptionKey = "silicon")
  private @Nullable String silicon;

  @Option(names = RATE, paramLabel = "NAME=LOW:HIGH", descriptionKey = "rate")
  private List<String> rates = new ArrayList<>();

  @Option(names = "--touched", descriptionKey = "touched")
  private boolean touched;

  @Option(names = AHEAD, paramLabel = "TIME", descriptionKey = "ahead")
  private @Nullable String ahead;

  @Option(names = SequencePlan.BOARD, paramLabel = "NAME|FILE", descriptionKey = "forecast-board")
  private @Nullable String board;

  @Option(names = LIMIT, paramLabel = "CURRENT", descriptionKey = "limit")
  private @Nullable String limit;

  @Option(names = CONFIDENCE, paramLabel = "PERCENT", descriptionKey = "confidence")
  private @Nullable String confidence;

  @Option(names = "--seed", paramLabel = "NUMBER", descriptionKey = "seed")
  private @Nullable Long seed;

  @Option(names = "--csv", paramLabel = "FILE", descriptionKey = "csv")
  private @Nullable Path csv;

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    Bench chosen = BenchArgument.resolve(Objects.requireNonNull(bench));
    FlameLog log = log(command);
    Question question = question(command, chosen, log.entries());
    if (csv != null) {
      AtomicFile.check(csv);
    }
    Forecasted forecasted = Forecasting.of(question);
    if (!(forecasted instanceof Forecast forecast)) {
      throw new CommandFailedException(
          Failures.INTERNAL,
          Message.of(
              MessageKey.FORECAST_FAILED,
              Argument.text(command),
              Argument.nested(
                  LumpedCircuitFile.said(((Forecasted.Unsolved) forecasted).reason()))));
    }
    if (csv != null) {
      AtomicFile.write(csv, ForecastCsv.of(forecast));
    }
    if (standard.json()) {
      standard.out().print(ForecastJson.of(forecast, log.calendar(), standard.sentences()));
    } else if (csv == null) {
      standard.out().print(new ForecastText(standard, forecast, log.calendar()).text());
    }
    return 0;
  }

  /** What stands in a file comes first, what is typed after it. */
  private FlameLog log(String command) {
    double perYear = hoursPerYear(command);
    if (file != null && !entries.isEmpty()) {
      throw new Typed(command, ENTRY)
          .refused(entries.get(0), Message.of(MessageKey.ALLOWED_WITHOUT, Argument.text(LOG)));
    }
    if (file != null) {
      if (hours != null) {
        throw new Typed(command, HOURS)
            .refused(hours, Message.of(MessageKey.ALLOWED_WITHOUT, Argument.text(LOG)));
      }
      return LogFile.read(file);
    }
    return entries.isEmpty()
        ? new FlameLog(List.of(), null)
        : LogWords.log(new Typed(command, ENTRY), entries, Calendar.burningRatio(perYear));
  }

  private double hoursPerYear(String command) {
    if (hours == null) {
      return Calendar.USUAL_HOURS;
    }
    OptionalDouble number = QuantityReader.si(hours, Dimension.NUMBER);
    double perYear = number.orElse(Double.NaN);
    if (!(perYear >= LogFile.LEAST_HOURS && perYear <= LogFile.MOST_HOURS)) {
      throw new Typed(command, HOURS).refused(hours, LogFile.allowedHoursPerYear());
    }
    return perYear;
  }

  private Question question(String command, Bench chosen, List<Logged> log) {
    double own = Parameter.SILICON.of(chosen);
    double warning = BoardArgument.fitted(command, chosen, board).sensing().warningAmps();
    return new Question(
        chosen,
        log,
        touched,
        number(
            new Typed(command, SILICON),
            silicon,
            new Plausible(
                Dimension.MASS_DENSITY,
                Parameter.SILICON.low(),
                Parameter.SILICON.high(),
                Question.USUAL_SILICON),
            own > 0 ? own : Question.USUAL_SILICON),
        ranges(command),
        number(
            new Typed(command, AHEAD),
            ahead,
            new Plausible(Dimension.TIME, 3600, Logged.MOST_SECONDS, USUAL_AHEAD_SECONDS),
            USUAL_AHEAD_SECONDS),
        number(
            new Typed(command, LIMIT),
            limit,
            new Plausible(Dimension.CURRENT, Logged.Read.LEAST_AMPS, Logged.Read.MOST_AMPS, 1e-6),
            warning),
        number(
            new Typed(command, CONFIDENCE),
            confidence,
            new Plausible(Dimension.RATIO, 0.5, 0.99, Question.USUAL_CONFIDENCE),
            Question.USUAL_CONFIDENCE),
        seed == null ? 1 : seed);
  }

  private static double number(
      Typed where, @Nullable String typed, Plausible plausible, double usual) {
    return typed == null ? usual : plausible.read(where, typed);
  }

  private Map<Rate, Range> ranges(String command) {
    Map<Rate, Range> ranges = new EnumMap<>(Rate.class);
    Typed where = new Typed(command, RATE);
    for (String typed : rates) {
      Matcher form = RANGE.matcher(typed);
      if (!form.matches()) {
        throw where.refused(
            typed, Message.of(MessageKey.ALLOWED_RATE, Argument.text(RATE_EXAMPLE)));
      }
      Rate rate =
          Stream.of(Rate.values())
              .filter(r -> JsonValue.spelling(r).equals(form.group(1)))
              .findFirst()
              .orElseThrow(() -> where.refused(form.group(1), names()));
      try {
        ranges.put(rate, new Range(ratio(form.group(2)), ratio(form.group(3))));
      } catch (RejectedValueException e) {
        throw where.refused(typed, Sentences.allowed(e));
      }
    }
    return ranges;
  }

  private static double ratio(String typed) {
    return QuantityReader.si(typed, Dimension.NUMBER).orElse(Double.NaN);
  }

  private static Message names() {
    String names =
        Stream.of(Rate.values()).map(JsonValue::spelling).collect(Collectors.joining(", "));
    return Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names));
  }
}
