package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.MeterText;
import halfwave.display.Sentences;
import halfwave.instrument.Look;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.MeterModel;
import halfwave.instrument.ShippedMeters;
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
  private static final String METER = "--meter";

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

  @Option(names = METER, paramLabel = "NAME", descriptionKey = "meter")
  private @Nullable String meter;

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    MeterFunction chosen = function(command, Objects.requireNonNull(function));
    MeterModel model = model(command);
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
            new LeadsOption(command, moment).hookUp(Objects.requireNonNull(leads)),
            Subjects.at(moment),
            new Look(60, moment.seed(), moment.timeMillis()));
    standard.out().print(standard.json() ? json(moment, measured) : text(moment, measured));
    return 0;
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

  private MeterModel model(String command) {
    String typed = meter;
    if (typed == null) {
      return ShippedMeters.service();
    }
    return ShippedMeters.all().stream()
        .filter(m -> m.name().equals(typed))
        .findFirst()
        .orElseThrow(
            () ->
                new Typed(command, METER)
                    .refused(typed, oneOf(ShippedMeters.all().stream().map(MeterModel::name))));
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
