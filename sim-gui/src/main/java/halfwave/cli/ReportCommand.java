package halfwave.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import halfwave.bench.Bench;
import halfwave.board.Ignition;
import halfwave.explain.Causes;
import halfwave.io.AtomicFile;
import halfwave.io.Typed;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.paper.BenchPages;
import halfwave.paper.BenchSubject;
import halfwave.paper.PaperSize;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays a bench up to a time and writes a report of it, to be printed. */
@Command(name = "report")
final class ReportCommand implements Callable<Integer> {

  private static final String PDF = "--pdf";
  private static final String DATE = "--date";

  /** What stands in the sense lead where nobody says what to do. */
  private static final String METER = "0s meter-on dc-microamps series-board";

  @Mixin private Standard standard = new Standard();
  @Mixin private SequenceOptions sequence = new SequenceOptions();
  @Mixin private PaperOption paper = new PaperOption();

  @Option(names = PDF, required = true, paramLabel = "FILE", descriptionKey = "report-pdf")
  private @Nullable Path pdf;

  @Option(names = DATE, paramLabel = "YYYY-MM-DD", descriptionKey = "report-date")
  private @Nullable String date;

  @Option(names = SequencePlan.ACT, paramLabel = "\"TIME ACT\"", descriptionKey = "report-act")
  private List<String> acts = new ArrayList<>();

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    Path file = Objects.requireNonNull(pdf);
    Ending.check(command, PDF, file, ".pdf");
    PaperSize size = paper.size(command);
    LocalDate on = date(command);
    SequencePlan plan = sequence.plan(command, done());
    AtomicFile.write(
        file,
        BenchPages.of(subject(plan), size, standard.sentences(), standard.language().locale(), on)
            .pdf());
    if (standard.json()) {
      standard
          .out()
          .print(
              JsonNodeFactory.instance.objectNode().put("file", file.toString()).toPrettyString()
                  + "\n");
    }
    return 0;
  }

  /** A meter on an electrode that sparks would not live to see the flame. */
  private List<String> done() {
    Bench chosen = BenchArgument.resolve(sequence.bench());
    boolean usual =
        acts.isEmpty()
            && !sequence.scripted()
            && chosen.design().ignition() != Ignition.SPARK_AND_SENSE;
    return usual ? List.of(METER) : acts;
  }

  private BenchSubject subject(SequencePlan plan) {
    List<Event> events = new ArrayList<>();
    Progress progress = new Progress(standard);
    try {
      Moment end =
          Playback.play(
                  plan.start(),
                  plan.untilMillis(),
                  plan.acts(),
                  slice -> {
                    events.addAll(slice.events());
                    return progress.goOn(slice, plan.untilMillis());
                  })
              .orElseThrow();
      return BenchSubject.of(end, Causes.of(end.board().stage(), events));
    } finally {
      progress.end();
    }
  }

  private LocalDate date(String command) {
    if (date == null) {
      return LocalDate.now(java.time.ZoneId.systemDefault());
    }
    try {
      return LocalDate.parse(date);
    } catch (DateTimeParseException e) {
      throw new Typed(command, DATE).refused(date, Message.of(MessageKey.ALLOWED_DATE));
    }
  }
}
