package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.display.BenchReport;
import halfwave.explain.BenchAnswer;
import halfwave.io.bench.BenchAnswerJson;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Solves a bench and tells its readings, where the volts go, and why. */
@Command(name = "solve")
final class SolveCommand implements Callable<Integer> {

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BENCH", descriptionKey = "bench")
  private @Nullable String bench;

  @Override
  public Integer call() {
    Bench chosen = BenchArgument.resolve(Objects.requireNonNull(bench));
    BenchAnswer answer = BenchAnswer.of(chosen);
    standard
        .out()
        .print(
            standard.json()
                ? BenchAnswerJson.text(answer, standard.sentences())
                : BenchReport.text(answer, standard.sentences()));
    return 0;
  }
}
