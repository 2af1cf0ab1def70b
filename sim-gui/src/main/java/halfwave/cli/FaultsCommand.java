package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.Condition;
import halfwave.bench.ShippedBenches;
import halfwave.display.Sentences;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.work.Aspect;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Proviso;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the kinds of faults, or shows one. */
@Command(name = "faults")
final class FaultsCommand implements Callable<Integer> {

  private static final int ID_WIDTH = 25;
  private static final int GROUP_WIDTH = 21;
  private static final int SEVERITY_WIDTH = 56;

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "FAULT", arity = "0..1", descriptionKey = "one-fault")
  private @Nullable String fault;

  @Override
  public Integer call() {
    if (fault == null) {
      standard.out().print(standard.json() ? listJson() : list());
    } else {
      FaultKind kind = resolve(fault);
      standard.out().print(standard.json() ? json(kind).toPrettyString() + "\n" : page(kind));
    }
    return 0;
  }

  private static FaultKind resolve(String text) {
    return FaultKind.named(text).orElseThrow(() -> unknown(text));
  }

  private static BadInputException unknown(String text) {
    String names =
        Stream.of(FaultKind.values()).map(FaultKind::id).collect(Collectors.joining(", "));
    return BadInputException.ofFile(
        text, Message.of(MessageKey.ALLOWED_FAULT, Argument.text(names)));
  }

  private String list() {
    Sentences sentences = standard.sentences();
    StringBuilder text = new StringBuilder();
    for (FaultKind kind : FaultKind.values()) {
      String cures = Repair.curing(kind).stream().map(Repair::id).collect(Collectors.joining(", "));
      text.append(padded(kind.id(), ID_WIDTH))
          .append(padded(sentences.name(kind.group()), GROUP_WIDTH))
          .append(sentences.name(kind))
          .append("\n    ")
          .append(padded(sentences.text(severity(kind)), SEVERITY_WIDTH))
          .append(sentences.text(shows(kind)))
          .append("\n    ")
          .append(sentences.text(Message.of(MessageKey.FAULT_CURED_BY)))
          .append(' ')
          .append(cures)
          .append('\n');
    }
    return text.toString();
  }

  private static Message severity(FaultKind kind) {
    return kind.dimension()
        .map(
            d ->
                Message.of(
                    MessageKey.FAULT_SEVERITY,
                    Argument.quantity(kind.typical(), d),
                    Argument.quantity(kind.least(), d),
                    Argument.quantity(kind.most(), d)))
        .orElseGet(() -> Message.of(MessageKey.FAULT_NO_SEVERITY));
  }

  private static Message shows(FaultKind kind) {
    return kind.trigger()
        .map(t -> Message.of(MessageKey.FAULT_SHOWS_WITH, Argument.name(t)))
        .orElseGet(() -> Message.of(MessageKey.FAULT_SHOWS_ALWAYS));
  }

  private String page(FaultKind kind) {
    Sentences sentences = standard.sentences();
    StringBuilder text = new StringBuilder();
    say(text, MessageKey.FAULT_TITLE, Argument.text(kind.id()), Argument.name(kind));
    text.append('\n');
    say(text, MessageKey.FAULT_OF, Argument.name(kind.group()));
    text.append(sentences.text(severity(kind))).append('\n');
    text.append(sentences.text(shows(kind))).append('\n');
    text.append('\n');
    say(text, MessageKey.FAULT_SEEN_BY);
    Set<Aspect> wrong = wrong(kind);
    showing(wrong).forEach(work -> line(text, work, shown(work, wrong)));
    text.append('\n');
    say(text, MessageKey.FAULT_CURED_BY);
    Repair.curing(kind).forEach(repair -> line(text, repair, sentences.name(repair)));
    return text.toString();
  }

  private static void line(StringBuilder text, Work work, String what) {
    text.append("  ").append(padded(work.id(), ID_WIDTH + 4)).append(what).append('\n');
  }

  private String shown(Work work, Set<Aspect> wrong) {
    Argument name = Argument.name((Enum<?>) work);
    return proviso(work, wrong)
        .map(p -> Message.of(MessageKey.FAULT_SEEN_WHEN, name, Argument.name(p)))
        .map(standard.sentences()::text)
        .orElseGet(() -> standard.sentences().text(name));
  }

  private static Optional<Proviso> proviso(Work work, Set<Aspect> wrong) {
    return wrong.stream()
        .filter(aspect -> shows(work).contains(aspect))
        .findFirst()
        .flatMap(work::proviso);
  }

  private static Set<Aspect> shows(Work work) {
    return work instanceof Look look ? look.shows() : ((MeterTest) work).shows();
  }

  private void say(StringBuilder text, MessageKey key, Argument... arguments) {
    text.append(standard.sentences().text(Message.of(key, arguments))).append('\n');
  }

  private static Set<Aspect> wrong(FaultKind kind) {
    Condition faulty = Fault.typical(kind).on(ShippedBenches.standard()).condition();
    return Aspect.amiss(faulty);
  }

  /** Looks and readings that show it by themselves, if only at times. */
  private static List<Work> showing(Set<Aspect> wrong) {
    return Stream.<Work>concat(Stream.of(Look.values()), Stream.of(MeterTest.values()))
        .filter(work -> !Collections.disjoint(shows(work), wrong))
        .toList();
  }

  private String listJson() {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    Stream.of(FaultKind.values()).forEach(kind -> all.add(json(kind)));
    return all.toPrettyString() + "\n";
  }

  private ObjectNode json(FaultKind kind) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("fault", kind.id())
        .put("name", standard.sentences().name(kind))
        .put("group", JsonValue.spelling(kind.group()));
    if (kind.dimension().isPresent()) {
      Dimension dimension = kind.dimension().get();
      ObjectNode severity = node.putObject("severity");
      severity.put("dimension", JsonValue.spelling(dimension));
      put(severity, "least", kind.least());
      put(severity, "typical", kind.typical());
      put(severity, "most", kind.most());
    } else {
      node.putNull("severity");
    }
    node.put("trigger", kind.trigger().map(JsonValue::spelling).orElse(null));
    ArrayNode shown = node.putArray("shownBy");
    ObjectNode provisos = node.putObject("provisos");
    Set<Aspect> wrong = wrong(kind);
    for (Work work : showing(wrong)) {
      shown.add(work.id());
      proviso(work, wrong).ifPresent(p -> provisos.put(work.id(), JsonValue.spelling(p)));
    }
    ArrayNode cured = node.putArray("curedBy");
    Repair.curing(kind).forEach(repair -> cured.add(repair.id()));
    return node;
  }

  private static void put(ObjectNode node, String field, double si) {
    if (si == Double.POSITIVE_INFINITY) {
      node.put(field, JsonValue.OPEN);
    } else {
      node.put(field, si);
    }
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(2, width - text.length()));
  }
}
