package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.instrument.MeterModel;
import halfwave.io.AtomicFile;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.io.bench.BenchText;
import halfwave.io.evidence.MatchJson;
import halfwave.io.evidence.MatchWords;
import halfwave.io.evidence.ReadingWords;
import halfwave.io.evidence.ReadingsFile;
import halfwave.matching.Match;
import halfwave.matching.Matched;
import halfwave.matching.Matching;
import halfwave.matching.ReadingKind;
import halfwave.matching.TakenReading;
import halfwave.matching.Unknown;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Fits a bench to readings that somebody took. */
@Command(name = "match")
final class MatchCommand implements Callable<Integer> {

  private static final String READINGS = "--readings";
  private static final String SERIES_DC = "--series-dc";
  private static final String SERIES_AC = "--series-ac";
  private static final String TERMINAL = "--terminal-volts";
  private static final String LEAD_OFF = "--lead-off-volts";
  private static final String FLAME_OUT = "--flame-out-volts";
  private static final String FIT = "--fit";
  private static final String REPLACE = "--replace";

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BENCH", descriptionKey = "match-bench")
  private @Nullable String bench;

  @Option(names = READINGS, paramLabel = "FILE", descriptionKey = "readings")
  private @Nullable Path file;

  @Option(names = SERIES_DC, paramLabel = "READING", descriptionKey = "reading-series-dc")
  private List<String> seriesDc = new ArrayList<>();

  @Option(names = SERIES_AC, paramLabel = "READING", descriptionKey = "reading-series-ac")
  private List<String> seriesAc = new ArrayList<>();

  @Option(names = TERMINAL, paramLabel = "READING", descriptionKey = "reading-terminal")
  private List<String> terminal = new ArrayList<>();

  @Option(names = LEAD_OFF, paramLabel = "READING", descriptionKey = "reading-lead-off")
  private List<String> leadOff = new ArrayList<>();

  @Option(names = FLAME_OUT, paramLabel = "READING", descriptionKey = "reading-flame-out")
  private List<String> flameOut = new ArrayList<>();

  @Option(names = MeterArgument.OPTION, paramLabel = "NAME", descriptionKey = "meter")
  private @Nullable String meter;

  @Option(names = FIT, paramLabel = "NAME", split = ",", descriptionKey = "fit")
  private List<String> fit = new ArrayList<>();

  @Option(names = "--write", paramLabel = "FILE", descriptionKey = "match-write")
  private @Nullable Path write;

  @Option(names = REPLACE, descriptionKey = "replace")
  private boolean replace;

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    Bench start = BenchArgument.resolve(Objects.requireNonNull(bench));
    List<TakenReading> readings = readings(command);
    Set<Unknown> unknowns = fit.isEmpty() ? Matching.usual(readings) : unknowns(command);
    Matched matched = Matching.of(start, unknowns, readings);
    if (!(matched instanceof Match match)) {
      int status = matched instanceof Matched.Impossible ? Failures.BAD_INPUT : Failures.INTERNAL;
      throw new CommandFailedException(
          status,
          Message.of(
              MessageKey.MATCH_FAILED,
              Argument.text(command),
              Argument.nested(MatchWords.failure(matched))));
    }
    if (write != null) {
      AtomicFile.write(write, BenchText.of(match.bench()), replace, REPLACE);
    }
    standard
        .out()
        .print(
            standard.json()
                ? MatchJson.of(match, standard.sentences())
                : MatchText.of(match, standard));
    return 0;
  }

  private List<TakenReading> readings(String command) {
    List<TakenReading> all = new ArrayList<>(file == null ? List.of() : ReadingsFile.read(file));
    MeterModel model = MeterArgument.resolve(command, meter);
    add(all, new Typed(command, SERIES_DC), ReadingKind.SERIES_DC, seriesDc, model);
    add(all, new Typed(command, SERIES_AC), ReadingKind.SERIES_AC, seriesAc, model);
    add(all, new Typed(command, TERMINAL), ReadingKind.TERMINAL_VOLTS, terminal, model);
    add(all, new Typed(command, LEAD_OFF), ReadingKind.LEAD_OFF_VOLTS, leadOff, model);
    add(all, new Typed(command, FLAME_OUT), ReadingKind.FLAME_OUT_VOLTS, flameOut, model);
    if (all.isEmpty()) {
      String options =
          String.join(", ", READINGS, SERIES_DC, SERIES_AC, TERMINAL, LEAD_OFF, FLAME_OUT);
      throw new CommandFailedException(
          Failures.BAD_INPUT,
          Message.of(
              MessageKey.USAGE_MISSING_ARGUMENT, Argument.text(command), Argument.text(options)));
    }
    return all;
  }

  private static void add(
      List<TakenReading> all, Typed where, ReadingKind kind, List<String> typed, MeterModel meter) {
    typed.forEach(text -> all.add(ReadingWords.reading(where, kind, text, meter)));
  }

  private Set<Unknown> unknowns(String command) {
    Set<Unknown> unknowns = EnumSet.noneOf(Unknown.class);
    for (String name : fit) {
      unknowns.add(
          Stream.of(Unknown.values())
              .filter(u -> JsonValue.spelling(u).equals(name))
              .findFirst()
              .orElseThrow(() -> new Typed(command, FIT).refused(name, names())));
    }
    return unknowns;
  }

  private static Message names() {
    String names =
        Stream.of(Unknown.values()).map(JsonValue::spelling).collect(Collectors.joining(", "));
    return Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names));
  }
}
