package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.ProbeWire;
import halfwave.display.MeterText;
import halfwave.display.QuantityReader;
import halfwave.display.Sentences;
import halfwave.instrument.Look;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.MeterModel;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import halfwave.sequence.Subjects;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a meter on a bench at a time of its heating call. */
@Command(name = "measure")
final class MeasureCommand implements Callable<Integer> {

  private static final String AT = "--at";
  private static final String FUNCTION = "--function";
  private static final String ALONG = "--wire-along";
  private static final String ACROSS = "--wire-across";

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BENCH", descriptionKey = "bench")
  private @Nullable String bench;

  @Option(names = SequencePlan.BOARD, paramLabel = "NAME|FILE", descriptionKey = "board")
  private @Nullable String board;

  @Option(names = SequencePlan.FAULT, paramLabel = "[TRIGGER:]CHANGE", descriptionKey = "fault")
  private List<String> faults = new ArrayList<>();

  @Option(names = SequencePlan.ACT, paramLabel = "\"TIME ACT\"", descriptionKey = "act")
  private List<String> acts = new ArrayList<>();

  @Option(names = AT, paramLabel = "TIME", defaultValue = "3min", descriptionKey = "at")
  private String at = "3min";

  @Option(names = FUNCTION, paramLabel = "NAME", required = true, descriptionKey = "function")
  private @Nullable String function;

  @Option(
      names = LeadsOption.OPTION,
      paramLabel = "WHERE",
      required = true,
      descriptionKey = "leads")
  private @Nullable String leads;

  @Option(names = MeterArgument.OPTION, paramLabel = "NAME", descriptionKey = "meter")
  private @Nullable String meter;

  @Option(names = ALONG, paramLabel = "LENGTH", descriptionKey = "wire-along")
  private @Nullable String along;

  @Option(names = ACROSS, paramLabel = "LENGTH", descriptionKey = "wire-across")
  private @Nullable String across;

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    MeterFunction chosen = function(command, Objects.requireNonNull(function));
    MeterModel model = MeterArgument.resolve(command, meter);
    ProbeWire wire =
        new ProbeWire(
            length(command, ALONG, along, 0, ProbeWire.MOST_ALONG_METERS),
            length(
                command,
                ACROSS,
                across,
                -ProbeWire.MOST_ACROSS_METERS,
                ProbeWire.MOST_ACROSS_METERS));
    SequencePlan plan =
        new SequencePlan(
            command,
            new SequencePlan.Options(
                Objects.requireNonNull(bench), board, faults, acts, null, AT, at, null));
    Moment moment =
        Playback.play(plan.start(), plan.untilMillis(), plan.acts(), slice -> true).orElseThrow();
    Measurement measured =
        Measuring.of(
            Meter.fresh(model),
            chosen,
            new LeadsOption(command, moment, wire).hookUp(Objects.requireNonNull(leads)),
            Subjects.at(moment),
            new Look(60, moment.seed(), moment.timeMillis()));
    standard.out().print(standard.json() ? json(moment, measured) : text(moment, measured));
    return 0;
  }

  /** Where a wire stands; without a wire there is no such place. */
  private double length(
      String command, String option, @Nullable String typed, double least, double most) {
    if (typed == null) {
      return 0;
    }
    Typed where = new Typed(command, option);
    if (!LeadsOption.wired(Objects.requireNonNull(leads))) {
      throw where.refused(typed, Message.of(MessageKey.ALLOWED_WITH_WIRE));
    }
    double meters = QuantityReader.si(typed, Dimension.LENGTH).orElse(Double.NaN);
    if (!(meters >= least && meters <= most)) {
      throw where.refused(
          typed,
          Message.of(
              MessageKey.ALLOWED_RANGE,
              Argument.quantity(least, Dimension.LENGTH),
              Argument.quantity(most, Dimension.LENGTH)));
    }
    return meters;
  }

  private MeterFunction function(String command, String typed) {
    return Stream.of(MeterFunction.values())
        .filter(f -> JsonValue.spelling(f).equals(typed))
        .findFirst()
        .orElseThrow(
            () ->
                new Typed(command, FUNCTION)
                    .refused(
                        typed, oneOf(Stream.of(MeterFunction.values()).map(JsonValue::spelling))));
  }

  private static Message oneOf(Stream<String> words) {
    return Message.of(
        MessageKey.ALLOWED_ONE_OF, Argument.text(words.collect(Collectors.joining(", "))));
  }

  private String text(Moment moment, Measurement measured) {
    Sentences sentences = standard.sentences();
    StringBuilder text = new StringBuilder();
    Message when =
        Message.of(
            MessageKey.MEASURE_WHEN,
            Argument.quantity(moment.timeMillis() / 1000.0, Dimension.TIME),
            Argument.name(moment.board().stage()));
    text.append(sentences.text(when)).append('\n');
    text.append(MeterText.text(measured.shown(), sentences)).append('\n');
    measured.cautions().forEach(c -> text.append(sentences.text(c)).append('\n'));
    return text.toString();
  }

  private String json(Moment moment, Measurement measured) {
    Sentences sentences = standard.sentences();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("timeMillis", moment.timeMillis())
        .put("stage", JsonValue.spelling(moment.board().stage()))
        .put("shown", MeterText.text(measured.shown(), sentences))
        .put("fuseIntact", measured.meter().fuseIntact())
        .put("meterAlive", measured.meter().alive());
    ArrayNode cautions = root.putArray("cautions");
    measured.cautions().forEach(c -> cautions.add(sentences.text(c)));
    return root.toPrettyString() + "\n";
  }
}
