package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import halfwave.bench.ShippedBenches;
import halfwave.board.Ignition;
import halfwave.display.Sentences;
import halfwave.io.BadInputException;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.work.Caution;
import halfwave.work.Handling;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists everything a person can do at a furnace, or shows one thing. */
@Command(name = "work")
final class WorkCommand implements Callable<Integer> {

  private static final int ID_WIDTH = 29;
  private static final int MINUTES_WIDTH = 3;
  private static final int OFF_WIDTH = 34;

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "WORK", arity = "0..1", descriptionKey = "one-work")
  private @Nullable String work;

  @Option(names = "--bench", paramLabel = "BENCH", descriptionKey = "work-bench")
  private @Nullable String bench;

  @Override
  public Integer call() {
    Ignition ignition =
        (bench == null ? ShippedBenches.standard() : BenchArgument.resolve(bench))
            .design()
            .ignition();
    if (work == null) {
      standard.out().print(standard.json() ? listJson(ignition) : list(ignition));
      return 0;
    }
    Work chosen = resolve(work);
    WorkPage page = new WorkPage(standard.sentences(), ignition);
    standard
        .out()
        .print(
            standard.json()
                ? WorkJson.of(chosen, standard.sentences(), ignition).toPrettyString() + "\n"
                : page.text(chosen));
    return 0;
  }

  private static Work resolve(String text) {
    return Work.named(text).orElseThrow(() -> unknown(text));
  }

  private static BadInputException unknown(String text) {
    String names = Work.all().stream().map(Work::id).collect(Collectors.joining(", "));
    return BadInputException.ofFile(
        text, Message.of(MessageKey.ALLOWED_WORK, Argument.text(names)));
  }

  private String listJson(Ignition ignition) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    Work.all().forEach(w -> all.add(WorkJson.of(w, standard.sentences(), ignition)));
    return all.toPrettyString() + "\n";
  }

  private String list(Ignition ignition) {
    Sentences sentences = standard.sentences();
    StringBuilder text = new StringBuilder();
    group(text, ignition, MessageKey.WORK_LOOKS, Look.values());
    group(text, ignition, MessageKey.WORK_READINGS, MeterTest.values());
    group(text, ignition, MessageKey.WORK_REPAIRS, Repair.values());
    group(text, ignition, MessageKey.WORK_HANDLING, Handling.values());
    text.append(sentences.text(Message.of(MessageKey.WORK_ABOUT))).append('\n');
    text.append(sentences.name(Caution.OFF_BEFORE_OPENING)).append('\n');
    text.append(sentences.name(Caution.NEVER_BYPASS)).append('\n');
    return text.toString();
  }

  private void group(StringBuilder text, Ignition ignition, MessageKey heading, Work... all) {
    Sentences sentences = standard.sentences();
    text.append(sentences.text(Message.of(heading))).append('\n');
    for (Work w : all) {
      if (!w.possibleAt(ignition)) {
        continue;
      }
      String minutes = sentences.text(Argument.count(w.minutes()));
      text.append("  ")
          .append(padded(w.id(), ID_WIDTH))
          .append(" ".repeat(Math.max(0, MINUTES_WIDTH - minutes.length())))
          .append(minutes)
          .append(" min  ")
          .append(padded(sentences.text(WorkPage.off(w)), OFF_WIDTH))
          .append(sentences.name(w, ignition))
          .append('\n');
    }
    text.append('\n');
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(2, width - text.length()));
  }
}
