package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.display.Sentences;
import halfwave.io.AtomicFile;
import halfwave.io.JsonValue;
import halfwave.io.bench.BenchText;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the shipped benches, shows one, or writes one as a file to edit. */
@Command(name = "benches")
final class BenchesCommand implements Callable<Integer> {

  private static final String REPLACE = "--replace";

  private static final int NAME_WIDTH = 28;
  private static final int ID_WIDTH = 20;

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BENCH", arity = "0..1", descriptionKey = "one-bench")
  private @Nullable String bench;

  @Option(names = "--write", paramLabel = "FILE", descriptionKey = "write")
  private @Nullable Path write;

  @Option(names = REPLACE, descriptionKey = "replace")
  private boolean replace;

  @Override
  public Integer call() {
    if (bench == null) {
      if (write != null) {
        throw standard.missing("BENCH");
      }
      standard.out().print(standard.json() ? listJson() : list());
      return 0;
    }
    Bench chosen = BenchArgument.resolve(bench);
    if (write != null) {
      AtomicFile.write(write, BenchText.of(chosen), replace, REPLACE);
      if (standard.json()) {
        standard.out().print(written(write));
      }
    } else {
      standard.out().print(standard.json() ? BenchText.of(chosen) : page(chosen));
    }
    return 0;
  }

  private String list() {
    StringBuilder text = new StringBuilder();
    for (Bench b : ShippedBenches.all()) {
      text.append(padded(b.name(), NAME_WIDTH)).append(about(b)).append('\n');
    }
    return text.toString();
  }

  private String listJson() {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (Bench b : ShippedBenches.all()) {
      all.addObject()
          .put("name", b.name())
          .put("description", about(b))
          .put("ignition", JsonValue.spelling(b.design().ignition()))
          .put("fuel", JsonValue.spelling(b.design().fuel()));
    }
    return all.toPrettyString() + "\n";
  }

  private static String written(Path file) {
    return JsonNodeFactory.instance.objectNode().put("file", file.toString()).toPrettyString()
        + "\n";
  }

  /** What the bench is, and every number of it that a sweep can change. */
  private String page(Bench b) {
    Sentences sentences = standard.sentences();
    StringBuilder text = new StringBuilder();
    Message line =
        Message.of(MessageKey.BENCH_LINE, Argument.text(b.name()), Argument.text(about(b)));
    text.append(sentences.text(line)).append("\n\n");
    for (Parameter p : Parameter.values()) {
      Message range =
          Message.of(
              MessageKey.BENCH_RANGE,
              Argument.quantity(p.of(b), p.dimension()),
              Argument.quantity(p.low(), p.dimension()),
              Argument.quantity(p.high(), p.dimension()));
      text.append(padded(p.id(), ID_WIDTH))
          .append(padded(sentences.text(range), NAME_WIDTH + ID_WIDTH - 8))
          .append(sentences.name(p))
          .append('\n');
    }
    return text.toString();
  }

  private String about(Bench b) {
    Sentences sentences = standard.sentences();
    return sentences
        .bench(b.name())
        .orElseGet(
            () -> sentences.name(b.design().ignition()) + ", " + sentences.name(b.design().fuel()));
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(2, width - text.length()));
  }
}
