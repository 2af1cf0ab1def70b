package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.lesson.DemonstrationFile;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Rehearsal;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Lists the shipped demonstrations; prints one and checks it against the model; or writes one as a
 * file to edit, a handout, or pictures.
 */
@Command(name = "demonstrations")
final class DemonstrationsCommand implements Callable<Integer> {

  private static final String REPLACE = "--replace";

  private static final int NAME_WIDTH = 35;

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "DEMONSTRATION", arity = "0..1", descriptionKey = "one-demonstration")
  private @Nullable String demonstration;

  @Option(names = "--write", paramLabel = "FILE", descriptionKey = "write-demonstration")
  private @Nullable Path write;

  @Option(names = REPLACE, descriptionKey = "replace")
  private boolean replace;

  @Mixin private LessonExports exports = new LessonExports();

  @Override
  public Integer call() {
    exports.check(standard.spec().qualifiedName());
    if (demonstration == null) {
      if (write != null || exports.wanted()) {
        throw standard.missing("DEMONSTRATION");
      }
      standard.out().print(standard.json() ? listJson() : list());
    } else if (write != null) {
      copy(demonstration, write);
    } else if (exports.wanted()) {
      exports.write(resolve(demonstration), standard);
    } else {
      Demonstration chosen = resolve(demonstration);
      DemonstrationPage page =
          new DemonstrationPage(chosen, standard.sentences(), standard.language().locale());
      Rehearsal rehearsal = Rehearsal.of(chosen);
      standard.out().print(standard.json() ? page.json(rehearsal) : page.text(rehearsal));
    }
    return 0;
  }

  private static Demonstration resolve(String text) {
    return ShippedDemonstrations.named(text)
        .orElseGet(() -> DemonstrationFile.read(BenchArgument.file(text, unknown(text))));
  }

  private static BadInputException unknown(String text) {
    String names =
        ShippedDemonstrations.all().stream()
            .map(Demonstration::name)
            .collect(Collectors.joining(", "));
    return BadInputException.ofFile(
        text, Message.of(MessageKey.ALLOWED_DEMONSTRATION, Argument.text(names)));
  }

  /** As it is shipped, with its units, not as the program would write it. */
  private void copy(String name, Path file) {
    byte[] bytes = ShippedDemonstrations.file(name).orElseThrow(() -> unknown(name));
    AtomicFile.write(file, new String(bytes, StandardCharsets.UTF_8), replace, REPLACE);
    if (standard.json()) {
      ObjectNode written = JsonNodeFactory.instance.objectNode().put("file", file.toString());
      standard.out().print(written.toPrettyString() + "\n");
    }
  }

  private String list() {
    Locale reader = standard.language().locale();
    StringBuilder text = new StringBuilder();
    for (Demonstration d : ShippedDemonstrations.all()) {
      text.append(d.name())
          .append(" ".repeat(Math.max(2, NAME_WIDTH - d.name().length())))
          .append(d.title().in(reader))
          .append('\n');
    }
    return text.toString();
  }

  private String listJson() {
    Locale reader = standard.language().locale();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode all = root.putArray("demonstrations");
    for (Demonstration d : ShippedDemonstrations.all()) {
      all.addObject()
          .put("name", d.name())
          .put("title", d.title().in(reader))
          .put("about", d.about().in(reader))
          .put("steps", d.steps().size());
    }
    return root.toPrettyString() + "\n";
  }
}
