package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.evidence.SymptomTable;
import halfwave.io.AtomicFile;
import halfwave.io.evidence.SymptomRows;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Computes what every kind of fault looks like on a bench. */
@Command(name = "symptoms")
final class SymptomsCommand implements Callable<Integer> {

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BENCH", descriptionKey = "bench")
  private @Nullable String bench;

  @Option(names = SequencePlan.BOARD, paramLabel = "NAME|FILE", descriptionKey = "board")
  private @Nullable String board;

  @Option(names = "--csv", paramLabel = "FILE", descriptionKey = "symptoms-csv")
  private @Nullable Path csv;

  @Option(names = "--markdown", paramLabel = "FILE", descriptionKey = "symptoms-markdown")
  private @Nullable Path markdown;

  @Override
  public Integer call() {
    Bench chosen = BenchArgument.resolve(Objects.requireNonNull(bench));
    BoardSettings settings = BoardArgument.fitted(standard.spec().qualifiedName(), chosen, board);
    Targets.check(standard.spec().qualifiedName(), csv, "--markdown", markdown);
    SymptomRows rows = new SymptomRows(standard.sentences(), computed(chosen, settings));
    if (csv != null) {
      AtomicFile.write(csv, rows.csv());
    }
    if (markdown != null) {
      AtomicFile.write(markdown, rows.markdown());
    }
    if (standard.json()) {
      standard.out().print(rows.json());
    } else if (csv == null && markdown == null) {
      standard.out().print(text(rows));
    }
    return 0;
  }

  private SymptomTable computed(Bench chosen, BoardSettings settings) {
    Progress progress = new Progress(standard);
    try {
      return SymptomTable.of(chosen, settings, progress).orElseThrow();
    } finally {
      progress.end();
    }
  }

  private String text(SymptomRows rows) {
    // what looks find needs more room than a line has
    TextTable table = new TextTable(narrow(rows.heading()), SymptomRows.WORDS);
    rows.rows().forEach(row -> table.add(narrow(row)));
    String note = standard.sentences().text(Message.of(MessageKey.SYMPTOMS_NOTE));
    return table + "\n" + String.join("\n", Wrapping.lines(note, Wrapping.WIDTH)) + "\n";
  }

  private static List<String> narrow(List<String> row) {
    return row.subList(0, row.size() - 1);
  }
}
