package halfwave.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which bench is played, with what and how long; acts are the command's own. A mixin. */
final class SequenceOptions {

  @Parameters(paramLabel = "BENCH", descriptionKey = "bench")
  private @Nullable String bench;

  @Option(names = SequencePlan.BOARD, paramLabel = "NAME|FILE", descriptionKey = "board")
  private @Nullable String board;

  @Option(names = SequencePlan.FAULT, paramLabel = "[TRIGGER:]CHANGE", descriptionKey = "fault")
  private List<String> faults = new ArrayList<>();

  @Option(names = "--script", paramLabel = "FILE", descriptionKey = "script")
  private @Nullable Path script;

  @Option(names = SequencePlan.FOR, paramLabel = "TIME", descriptionKey = "for")
  private @Nullable String length;

  @Option(names = "--seed", paramLabel = "NUMBER", descriptionKey = "seed")
  private @Nullable Long seed;

  /** The bench as it was typed. */
  String bench() {
    return Objects.requireNonNull(bench);
  }

  /** Whether a script says what is done. */
  boolean scripted() {
    return script != null;
  }

  /** The plan, with the acts that were typed. */
  SequencePlan plan(String command, List<String> acts) {
    return new SequencePlan(
        command,
        new SequencePlan.Options(
            bench(), board, faults, acts, script, SequencePlan.FOR, length, seed));
  }
}
