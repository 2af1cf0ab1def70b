package halfwave.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.circuit.Solved;
import halfwave.io.AtomicFile;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.bench.BenchFile;
import halfwave.io.bench.LumpedCircuitFile;
import halfwave.io.bench.SpiceDeck;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a bench, or one circuit of a file, as a deck for a circuit simulator. */
@Command(name = "spice")
final class SpiceCommand implements Callable<Integer> {

  private static final String NUMBER = "--number";

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "FILE", descriptionKey = "bench-or-circuit")
  private @Nullable Path file;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      descriptionKey = "output")
  private @Nullable Path output;

  @Option(names = NUMBER, paramLabel = "N", descriptionKey = "number")
  private @Nullable Integer number;

  @Override
  public Integer call() {
    String deck = SpiceDeck.of(solved(Objects.requireNonNull(file)));
    String answer = deck;
    if (output != null) {
      AtomicFile.write(output, deck);
      answer = "";
    }
    if (standard.json()) {
      answer =
          JsonNodeFactory.instance
                  .objectNode()
                  .put(output == null ? "deck" : "file", output == null ? deck : output.toString())
                  .toPrettyString()
              + "\n";
    }
    standard.out().print(answer);
    return 0;
  }

  /** The name of a shipped bench, a bench file, or a circuit file. */
  private Solved solved(Path given) {
    Optional<Bench> shipped = ShippedBenches.named(given.toString());
    if (shipped.isPresent()) {
      return CircuitSolver.solved(shipped.get());
    }
    JsonValue value = JsonFile.read(given);
    return BenchFile.isBench(value)
        ? CircuitSolver.solved(BenchFile.of(value))
        : CircuitSolver.solved(chosen(LumpedCircuitFile.of(value)));
  }

  /** A file with several circuits needs to be told which, since a deck holds one. */
  private LumpedCircuitFile.Entry chosen(List<LumpedCircuitFile.Entry> entries) {
    int count = entries.size();
    if (number == null && count == 1) {
      return entries.get(0);
    }
    if (number != null && number >= 1 && number <= count) {
      return entries.get(number - 1);
    }
    Message missing = Message.of(MessageKey.VALUE_MISSING);
    throw new CommandFailedException(
        Failures.BAD_INPUT,
        Message.of(
            MessageKey.USAGE_BAD_VALUE,
            Argument.text(standard.spec().qualifiedName()),
            Argument.text(NUMBER),
            number == null ? Argument.nested(missing) : Argument.text(number.toString()),
            Argument.nested(Message.of(MessageKey.ALLOWED_CIRCUIT_NUMBER, Argument.count(count)))));
  }
}
