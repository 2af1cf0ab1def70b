package halfwave.benchmark;

import halfwave.board.Board;
import halfwave.board.BoardInputs;
import halfwave.board.BoardOutputs;
import halfwave.board.BoardSettings;
import halfwave.board.BoardState;
import halfwave.board.BoardStep;
import halfwave.board.FlameSignal;
import halfwave.board.ShippedBoards;
import halfwave.board.Stage;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Transitions of the standard board in a whole call, from no power to standby after the flame. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class BoardBenchmark {

  /** Counted by {@link #wholeCall}, which refuses any other number. */
  private static final int TRANSITIONS = 12;

  /** How long the burner is kept running (ms). */
  private static final long BURNS_MILLIS = 600_000;

  private final BoardSettings settings = ShippedBoards.all().get(0);

  private BoardState state;
  private BoardOutputs outputs;
  private int made;

  /** Settling, what is due, and time going on, as a run of the simulator does them. */
  @Benchmark
  @OperationsPerInvocation(TRANSITIONS)
  public BoardState wholeCall() {
    state = BoardState.unpowered(settings);
    outputs = Board.outputs(settings, state);
    made = 0;
    pass(true, BURNS_MILLIS);
    pass(false, BURNS_MILLIS);
    if (made != TRANSITIONS || state.stage() != Stage.STANDBY) {
      throw new IllegalStateException(made + " transitions to " + state);
    }
    return state;
  }

  private void pass(boolean call, long millis) {
    long left = millis;
    BoardInputs inputs = settle(call);
    while (left > 0) {
      long step = Math.min(left, Board.dueMillis(settings, state, inputs));
      state = Board.after(settings, state, inputs, step);
      left -= step;
      inputs = settle(call);
    }
  }

  /** Until nothing that follows the outputs changes any more. */
  private BoardInputs settle(boolean call) {
    while (true) {
      FlameSignal signal = outputs.gas() ? FlameSignal.GOOD : FlameSignal.NONE;
      BoardInputs inputs = new BoardInputs(true, call, outputs.inducer(), true, true, true, signal);
      BoardStep step = Board.settle(settings, state, inputs);
      state = step.state();
      made += step.transitions().size();
      BoardOutputs next = Board.outputs(settings, state);
      boolean same = next.equals(outputs);
      outputs = next;
      if (same && step.transitions().isEmpty()) {
        return inputs;
      }
    }
  }
}
