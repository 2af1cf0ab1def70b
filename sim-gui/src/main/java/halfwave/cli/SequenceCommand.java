package halfwave.cli;

import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.sequence.SequenceCsv;
import halfwave.io.sequence.SequenceJson;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.chart.SequenceChart;
import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import halfwave.sequence.Segment;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays what a bench and its board do over time. */
@Command(name = "sequence")
final class SequenceCommand implements Callable<Integer> {

  @Mixin private Standard standard = new Standard();
  @Mixin private SequenceOptions sequence = new SequenceOptions();

  @Option(names = SequencePlan.ACT, paramLabel = "\"TIME ACT\"", descriptionKey = "act")
  private List<String> acts = new ArrayList<>();

  @Option(names = "--csv", paramLabel = "FILE", descriptionKey = "sequence-csv")
  private @Nullable Path csv;

  @Option(
      names = {PictureTarget.OPTION, PictureTarget.EARLIER},
      paramLabel = "FILE",
      descriptionKey = "picture")
  private @Nullable Path picture;

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    SequencePlan plan = sequence.plan(command, acts);
    PictureTarget target = PictureTarget.of(command, picture);
    Targets.check(command, csv, PictureTarget.OPTION, picture);
    if (csv == null) {
      play(plan, target, slice -> {});
      return 0;
    }
    try (AtomicFile file = AtomicFile.open(csv)) {
      SequenceCsv table = new SequenceCsv(file.stream());
      play(plan, target, slice -> table.add(slice.samples()));
      file.keep();
    } catch (UncheckedIOException e) {
      throw BadInputException.ofFile(csv.toString(), Message.of(MessageKey.ALLOWED_WRITABLE_FILE));
    }
    return 0;
  }

  private void play(SequencePlan plan, @Nullable PictureTarget target, Consumer<Segment> table) {
    List<Message> about = plan.about(standard.sentences());
    SequenceChart chart = new SequenceChart(plan.start(), plan.untilMillis(), about);
    SequenceText text = new SequenceText(standard.sentences());
    SequenceJson json =
        standard.json()
            ? new SequenceJson(standard.out(), plan.start(), standard.sentences())
            : null;
    Progress progress = new Progress(standard);
    Moment end;
    try {
      end =
          Playback.play(
                  plan.start(),
                  plan.untilMillis(),
                  plan.acts(),
                  slice -> {
                    table.accept(slice);
                    if (target != null) {
                      chart.add(slice);
                    }
                    if (json != null) {
                      json.add(slice);
                    } else if (csv == null && target == null) {
                      text.add(slice);
                    }
                    return progress.goOn(slice, plan.untilMillis());
                  })
              .orElseThrow();
    } finally {
      progress.end();
    }
    if (target != null) {
      target.write(
          target.bytes(
              chart.picture(standard.sentences()),
              plan.start().bench().name(),
              standard.language()));
    }
    if (json != null) {
      json.end(end);
    } else if (csv == null && target == null) {
      standard.out().print(text.text(plan.start(), about));
    }
  }
}
