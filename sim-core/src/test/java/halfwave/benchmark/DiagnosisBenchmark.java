package halfwave.benchmark;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.diagnosis.Advice;
import halfwave.diagnosis.Adviser;
import halfwave.diagnosis.Belief;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Outlook;
import halfwave.diagnosis.Priors;
import halfwave.evidence.Course;
import halfwave.io.evidence.CaseCache;
import halfwave.io.evidence.PriorsFile;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What a person waits for after typing a reading. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DiagnosisBenchmark {

  private static final Entry GOES_OUT =
      new Entry.Observed(new Check.Call(), new Outcome.Found(Course.GOES_OUT));

  private final Bench bench = ShippedBenches.standard();
  private final Priors priors = PriorsFile.shipped();
  private final Outlook outlook = outlook();
  private final Adviser adviser = new Adviser(outlook, bench.design().ignition());

  private Outlook outlook() {
    return new Outlook(
        new CaseCache(null)
            .get(
                bench,
                ShippedBoards.standard(bench.design().ignition()),
                priors.causes(),
                (done, all) -> true)
            .orElseThrow(),
        priors);
  }

  /** One reading and the advice after it. */
  @Benchmark
  public Advice readingAndAdvice() {
    Belief belief = outlook.start().after(GOES_OUT);
    return adviser.advice(belief);
  }

  /** The shipped table of a bench, from its bytes to being ready. */
  @Benchmark
  public Outlook readyTable() {
    return outlook();
  }
}
