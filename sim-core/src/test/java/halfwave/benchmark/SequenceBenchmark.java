package halfwave.benchmark;

import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.sequence.Segment;
import halfwave.sequence.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Simulated time: a heating call, a day of them, a week of lockout. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SequenceBenchmark {

  private static final long MINUTE = 60_000;
  private static final long DAY = 24 * 60 * MINUTE;

  private final Moment cold = Moment.cold(ShippedBenches.standard(), ShippedBoards.all().get(0), 1);

  private final Sequence warm = new Sequence();

  /** A call of ten minutes and five minutes after it, every current computed anew: 900 s. */
  @Benchmark
  public Segment call() {
    return new Sequence().advance(cold, 15 * MINUTE, calls(1));
  }

  /** The same with the currents remembered from the last time: 900 s. */
  @Benchmark
  public Segment callAgain() {
    return warm.advance(cold, 15 * MINUTE, calls(1));
  }

  /** A day of 96 calls. */
  @Benchmark
  public Segment day() {
    return new Sequence().advance(cold, DAY, calls(96));
  }

  /** A week without gas: a lockout of an hour again and again. */
  @Benchmark
  public Segment weekOfLockout() {
    return warm.advance(
        cold,
        7 * DAY,
        List.of(
            new Act(0, new Deed.Supply(true)),
            new Act(0, new Deed.Alter(new Change.Upset(Disorder.GAS_SHUT, true))),
            new Act(1000, new Deed.Call(true))));
  }

  private static List<Act> calls(int count) {
    List<Act> acts = new ArrayList<>();
    acts.add(new Act(0, new Deed.Supply(true)));
    for (int k = 0; k < count; k++) {
      acts.add(new Act(15 * MINUTE * k + 1000, new Deed.Call(true)));
      acts.add(new Act(15 * MINUTE * k + 10 * MINUTE, new Deed.Call(false)));
    }
    return acts;
  }
}
