package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.diagnosis.Adviser;
import halfwave.diagnosis.Belief;
import halfwave.diagnosis.CaseTable;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outlook;
import halfwave.diagnosis.Priors;
import halfwave.io.AtomicFile;
import halfwave.io.CacheFolder;
import halfwave.io.Typed;
import halfwave.io.evidence.CallLogFile;
import halfwave.io.evidence.CallLogWords;
import halfwave.io.evidence.CaseCache;
import halfwave.io.evidence.DiagnosisJson;
import halfwave.io.evidence.PriorsFile;
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

/** Says what may be wrong after what was found, and what to do next. */
@Command(name = "diagnose")
final class DiagnoseCommand implements Callable<Integer> {

  private static final String FOUND = "FOUND";

  @Mixin private Standard standard = new Standard();

  @Parameters(index = "0", paramLabel = "BENCH", descriptionKey = "bench")
  private @Nullable String bench;

  @Parameters(index = "1..*", paramLabel = FOUND, arity = "0..*", descriptionKey = "found")
  private List<String> found = new ArrayList<>();

  @Option(names = SequencePlan.BOARD, paramLabel = "NAME|FILE", descriptionKey = "board")
  private @Nullable String board;

  @Option(names = "--log", paramLabel = "FILE", descriptionKey = "call-log")
  private @Nullable Path log;

  @Option(names = "--priors", paramLabel = "FILE", descriptionKey = "priors")
  private @Nullable Path priors;

  @Option(names = "--write-priors", paramLabel = "FILE", descriptionKey = "write-priors")
  private @Nullable Path writePriors;

  @Option(names = "--write-log", paramLabel = "FILE", descriptionKey = "write-log")
  private @Nullable Path writeLog;

  @Option(names = "--replace", descriptionKey = "replace")
  private boolean replace;

  @Option(names = "--all", descriptionKey = "all-checks")
  private boolean all;

  @Override
  public Integer call() {
    Bench chosen = BenchArgument.resolve(Objects.requireNonNull(bench));
    BoardSettings settings = BoardArgument.fitted(standard.spec().qualifiedName(), chosen, board);
    Priors judgement = priors == null ? PriorsFile.shipped() : PriorsFile.read(priors);
    List<Entry> entries = entries(chosen);
    write(writeLog, CallLogFile.text(entries));
    write(writePriors, new String(PriorsFile.shippedBytes(), StandardCharsets.UTF_8));
    Outlook outlook = new Outlook(table(chosen, settings, judgement), judgement);
    Belief belief = outlook.start().after(entries);
    Adviser adviser = new Adviser(outlook, chosen.design().ignition());
    standard
        .out()
        .print(
            standard.json()
                ? DiagnosisJson.text(belief, adviser.advice(belief), standard.sentences())
                : new DiagnosisText(standard.sentences(), all)
                    .of(chosen, belief, adviser.advice(belief)));
    return 0;
  }

  private void write(@Nullable Path file, String text) {
    if (file != null) {
      AtomicFile.write(file, text, replace, "--replace");
    }
  }

  private List<Entry> entries(Bench chosen) {
    List<Entry> entries = new ArrayList<>();
    if (log != null) {
      entries.addAll(CallLogFile.read(log, chosen.design().ignition()));
    }
    Typed where = new Typed(standard.spec().qualifiedName(), FOUND);
    for (String line : found) {
      entries.add(CallLogWords.entry(where, line, chosen.design().ignition()));
    }
    return entries;
  }

  private CaseTable table(Bench chosen, BoardSettings settings, Priors judgement) {
    Progress progress = new Progress(standard);
    try {
      return new CaseCache(CacheFolder.path())
          .get(chosen, settings, judgement.causes(), progress)
          .orElseThrow();
    } finally {
      progress.end();
    }
  }
}
