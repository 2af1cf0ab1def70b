package halfwave.board;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A board at work in its surroundings, with the monitor beside it. */
final class BoardRun {

  /** What changed, and when. */
  record Entry(long atMillis, Transition transition, BoardOutputs outputs) {}

  /** A change of outputs brings at most one of pressure and one of flame, which bring others. */
  private static final int MOST_ROUNDS = 20;

  final BoardSettings settings;
  final List<Entry> log = new ArrayList<>();
  final Set<Stage> stages = EnumSet.noneOf(Stage.class);
  final Map<SafetyRule, String> broken = new EnumMap<>(SafetyRule.class);
  private BoardState state;
  private SafetyMonitor monitor;
  private SenseFilter filter = SenseFilter.QUIET;
  private BoardOutputs outputs;
  private BoardInputs inputs;
  private long now;
  private boolean logs = true;

  BoardRun(BoardSettings settings) {
    this.settings = settings;
    this.state = BoardState.unpowered(settings);
    this.monitor = SafetyMonitor.unpowered(settings);
    this.outputs = Board.outputs(settings, state);
    this.inputs = BoardPlant.IDLE.withPower(false).inputs(outputs);
  }

  /** Keeps no log of what happens. */
  BoardRun silent() {
    logs = false;
    return this;
  }

  Stage stage() {
    return state.stage();
  }

  BoardState state() {
    return state;
  }

  BoardOutputs outputs() {
    return outputs;
  }

  StatusCode code() {
    return Board.code(state, inputs.signal());
  }

  long now() {
    return now;
  }

  /** Lets time pass in steps as long as the board allows. */
  BoardRun pass(BoardPlant plant, long millis) {
    return pass(plant, millis, Board.NEVER);
  }

  /** Lets time pass in steps of at most that length. */
  BoardRun pass(BoardPlant plant, long millis, long mostMillis) {
    long end = now + millis;
    settle(plant, false);
    while (now < end) {
      long due = Board.dueMillis(settings, state, inputs);
      later(Math.min(Math.min(due, mostMillis), end - now));
      settle(plant, false);
    }
    return this;
  }

  /** Lets time pass until a stage begins. */
  BoardRun until(BoardPlant plant, Stage stage) {
    settle(plant, false);
    while (state.stage() != stage) {
      long due = Board.dueMillis(settings, state, inputs);
      if (due == Board.NEVER) {
        throw new AssertionError("stays in " + state + " and never comes to " + stage);
      }
      later(due);
      settle(plant, false);
    }
    return this;
  }

  /**
   * Lets time pass with a current through the sense filter.
   *
   * @param onlyWithGas it flows only while a valve is open
   */
  BoardRun sense(BoardPlant plant, SenseCurrent current, boolean onlyWithGas, long millis) {
    long end = now + millis;
    settle(plant, true);
    while (now < end) {
      boolean flows = outputs.gas() || !onlyWithGas;
      double mean = flows ? current.meanAmps(now) : 0;
      double rms = flows ? current.rmsAmps(now) : 0;
      boolean rests = filter.meanAmps() == mean && filter.alternatingRmsAmps() == rms;
      long sample = rests && current.steady() ? Board.NEVER : SenseCurrent.SAMPLE_MILLIS;
      long due = Board.dueMillis(settings, state, inputs);
      long step = Math.min(Math.min(due, sample), end - now);
      later(step);
      filter = filter.after(settings.sensing(), mean, rms, step / 1000.0);
      settle(plant, true);
    }
    return this;
  }

  private void later(long millis) {
    state = Board.after(settings, state, inputs, millis);
    monitor = monitor.later(settings, inputs, millis);
    now += millis;
    show();
  }

  private void settle(BoardPlant plant, boolean sensed) {
    for (int k = 0; k < MOST_ROUNDS; k++) {
      inputs = sensed ? plant.inputs(outputs, filter.signal()) : plant.inputs(outputs);
      BoardStep step = Board.settle(settings, state, inputs);
      state = step.state();
      step.transitions().forEach(this::note);
      BoardOutputs before = outputs;
      show();
      monitor =
          monitor.settled(
              settings,
              inputs,
              step,
              outputs,
              rule -> broken.putIfAbsent(rule, "at " + now + " ms: " + state + " " + inputs));
      if (step.transitions().isEmpty() && outputs.equals(before)) {
        return;
      }
    }
    throw new AssertionError("board and plant do not rest: " + state + " " + inputs);
  }

  private void note(Transition t) {
    stages.add(t.to());
    if (logs) {
      log.add(new Entry(now, t, outputs));
    }
  }

  private void show() {
    BoardOutputs shown = Board.outputs(settings, state);
    if (logs && !shown.equals(outputs)) {
      log.add(new Entry(now, null, shown));
    }
    outputs = shown;
  }
}
