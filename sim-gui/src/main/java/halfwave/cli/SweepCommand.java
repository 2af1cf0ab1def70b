package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.io.AtomicFile;
import halfwave.io.bench.SweepCsv;
import halfwave.io.bench.SweepJson;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.chart.SweepChart;
import halfwave.quantity.RejectedValueException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes one or two parameters of a bench through a range. */
@Command(name = "sweep")
final class SweepCommand implements Callable<Integer> {

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BENCH", descriptionKey = "bench")
  private @Nullable String bench;

  @Option(
      names = AxisOption.OPTION,
      required = true,
      paramLabel = "NAME=FROM:TO:COUNT[:log]",
      descriptionKey = "vary")
  private List<String> vary = new ArrayList<>();

  @Option(names = "--csv", paramLabel = "FILE", descriptionKey = "csv")
  private @Nullable Path csv;

  @Option(
      names = {PictureTarget.OPTION, PictureTarget.EARLIER},
      paramLabel = "FILE",
      descriptionKey = "picture")
  private @Nullable Path picture;

  @Override
  public Integer call() {
    AxisOption option = new AxisOption(standard.spec().qualifiedName());
    Bench chosen = BenchArgument.resolve(Objects.requireNonNull(bench));
    List<Axis> axes = vary.stream().map(option::axis).toList();
    String command = standard.spec().qualifiedName();
    PictureTarget target = PictureTarget.of(command, picture);
    Targets.check(command, csv, PictureTarget.OPTION, picture);
    Sweep sweep = sweep(option, chosen, axes);
    // drawn before anything is written: a failure leaves no half of an answer
    byte[] drawn =
        target == null
            ? new byte[0]
            : target.bytes(
                SweepChart.picture(sweep, standard.sentences()),
                chosen.name(),
                standard.language());
    if (csv != null) {
      AtomicFile.write(csv, SweepCsv.of(sweep).getBytes(StandardCharsets.UTF_8));
    }
    if (target != null) {
      target.write(drawn);
    }
    if (standard.json()) {
      standard.out().print(SweepJson.of(sweep));
    } else if (csv == null && target == null) {
      standard
          .out()
          .print(SweepText.of(sweep, standard.sentences(), standard.spec().resourceBundle()));
    }
    return 0;
  }

  private Sweep sweep(AxisOption option, Bench chosen, List<Axis> axes) {
    Progress progress = new Progress(standard);
    try {
      return Sweep.of(chosen, axes, progress).orElseThrow();
    } catch (RejectedValueException e) {
      Message allowed = Message.of(MessageKey.ALLOWED_AXES, Argument.count(Sweep.MOST_ROWS));
      throw option.refused(AxisOption.OPTION, String.join(" ", vary), allowed);
    } finally {
      progress.end();
    }
  }
}
