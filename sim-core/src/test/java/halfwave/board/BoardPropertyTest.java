package halfwave.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every shipped board, on seeded random days; ten times as long with deep tests. */
class BoardPropertyTest {

  private static final int DEEPER = Boolean.getBoolean("halfwave.deep") ? 10 : 1;

  /** Days stepped millisecond by millisecond. */
  private static final int DAYS = 6 * DEEPER;

  private static final int EVENTS_OF_A_DAY = 40;

  /** Events of a run that senses a current. */
  private static final int EVENTS = 10_000 * DEEPER;

  private static final Set<SenseCurrent> PROVE_NOTHING = provingNothing();

  private static final BoardPlant UNLIT = BoardPlant.HEALTHY.withFlame(FlameSignal.NONE, true);

  private record Event(BoardPlant plant, SenseCurrent current, boolean onlyWithGas, long millis) {}

  static Stream<BoardSettings> boards() {
    return ShippedBoards.all().stream();
  }

  private static Set<SenseCurrent> provingNothing() {
    Set<SenseCurrent> currents = EnumSet.allOf(SenseCurrent.class);
    currents.removeIf(c -> !c.provesNothing());
    return currents;
  }

  private static <T> T any(SplittableRandom random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** Mostly a call and all in order, so that most calls come as far as a flame. */
  private static Event event(SplittableRandom random, Set<SenseCurrent> palette, long mostMillis) {
    BoardPlant.Pressure pressure =
        random.nextInt(10) > 0
            ? BoardPlant.Pressure.FOLLOWS_THE_INDUCER
            : any(random, List.of(BoardPlant.Pressure.values()));
    boolean onlyWithGas = random.nextInt(8) > 0;
    FlameSignal signal =
        random.nextInt(3) > 0 ? FlameSignal.GOOD : any(random, List.of(FlameSignal.values()));
    BoardPlant plant =
        new BoardPlant(
            random.nextInt(12) > 0,
            random.nextInt(6) > 0,
            random.nextInt(25) > 0,
            random.nextInt(25) > 0,
            random.nextInt(200) > 0,
            pressure,
            signal,
            onlyWithGas);
    // from a blink of a millisecond to the longest, as many short ones as long ones
    double length = random.nextDouble() * StrictMath.log(mostMillis);
    long millis = Math.max(1, (long) StrictMath.exp(length));
    return new Event(plant, any(random, List.copyOf(palette)), onlyWithGas, millis);
  }

  /** A random day; on even ones hardly anything lights. */
  private static List<Event> day(long seed, long mostMillis) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Event> day = new ArrayList<>();
    for (int k = 0; k < EVENTS_OF_A_DAY; k++) {
      Event e = event(random, EnumSet.allOf(SenseCurrent.class), mostMillis);
      boolean nothingLights = seed % 2 == 0 && random.nextInt(25) > 0;
      day.add(nothingLights ? new Event(UNLIT, e.current(), e.onlyWithGas(), e.millis()) : e);
    }
    return day;
  }

  /** Nothing happens before it is due: stepping a millisecond at a time tells the same. */
  @ParameterizedTest
  @MethodSource("boards")
  void jumpingTellsWhatSteppingTells(BoardSettings board) {
    Set<Stage> seen = EnumSet.noneOf(Stage.class);
    for (long seed = 1; seed <= DAYS; seed++) {
      BoardRun jumps = new BoardRun(board);
      BoardRun steps = new BoardRun(board);
      for (Event e : day(seed, 150_000)) {
        jumps.pass(e.plant(), e.millis());
        steps.pass(e.plant(), e.millis(), 1);
        assertThat(jumps.state()).as("%s, seed %d", board.name(), seed).isEqualTo(steps.state());
      }
      assertThat(jumps.log).as("%s, seed %d", board.name(), seed).isEqualTo(steps.log);
      seen.addAll(jumps.stages);
    }
    assertThat(seen).contains(Stage.RUN, Stage.SOFT_LOCKOUT);
  }

  /** Looking in between changes nothing, and the same day twice is the same. */
  @ParameterizedTest
  @MethodSource("boards")
  void lookingChangesNothing(BoardSettings board) {
    for (long seed = 1; seed <= 100L * DEEPER; seed++) {
      SplittableRandom cuts = new SplittableRandom(-seed);
      BoardRun whole = new BoardRun(board);
      BoardRun again = new BoardRun(board);
      BoardRun cut = new BoardRun(board);
      // long enough for a lockout of three hours to end
      for (Event e : day(seed, 15_000_000)) {
        whole.pass(e.plant(), e.millis());
        again.pass(e.plant(), e.millis());
        long part = cuts.nextLong(e.millis() + 1);
        cut.pass(e.plant(), part).pass(e.plant(), e.millis() - part);
        assertThat(cut.state()).as("%s, seed %d", board.name(), seed).isEqualTo(whole.state());
      }
      assertThat(again.log).as("%s, seed %d", board.name(), seed).isEqualTo(whole.log);
      assertThat(cut.log).as("%s, seed %d", board.name(), seed).isEqualTo(whole.log);
    }
  }

  /** One step of the clock or two: the same state, from any state that a board came to. */
  @ParameterizedTest
  @MethodSource("boards")
  void timeAddsUp(BoardSettings board) {
    for (long seed = 1; seed <= 100L * DEEPER; seed++) {
      SplittableRandom random = new SplittableRandom(-seed);
      BoardRun run = new BoardRun(board).silent();
      for (Event e : day(seed, 600_000)) {
        BoardState state = run.pass(e.plant(), e.millis()).state();
        BoardInputs in = e.plant().inputs(run.outputs());
        long due = Math.min(Board.dueMillis(board, state, in), 100_000_000);
        long first = random.nextLong(due + 1);
        BoardState parts =
            Board.after(board, Board.after(board, state, in, first), in, due - first);
        assertThat(parts)
            .as("%s, seed %d, %s", board.name(), seed, state)
            .isEqualTo(Board.after(board, state, in, due));
      }
    }
  }

  /** The same rules as for everything that small boards can do, with currents and real times. */
  @ParameterizedTest
  @MethodSource("boards")
  void nothingUnsafeHappensWithAnyCurrent(BoardSettings board) {
    long seed = 7;
    SplittableRandom random = new SplittableRandom(seed);
    BoardRun run = new BoardRun(board).silent();
    for (int k = 0; k < EVENTS; k++) {
      Event e = event(random, EnumSet.allOf(SenseCurrent.class), 300_000);
      run.sense(e.plant(), e.current(), e.onlyWithGas(), e.millis());
      assertThat(run.broken).as("%s, seed %d, event %d", board.name(), seed, k).isEmpty();
    }
    assertThat(run.stages).contains(Stage.RUN, Stage.SOFT_LOCKOUT, Stage.FALSE_FLAME);
  }

  /** AC of any size, DC the wrong way: no board is ever told of a flame. */
  @ParameterizedTest
  @MethodSource("boards")
  void onlyRectifiedCurrentProvesAFlame(BoardSettings board) {
    long seed = 8;
    SplittableRandom random = new SplittableRandom(seed);
    BoardRun run = new BoardRun(board).silent();
    for (int k = 0; k < EVENTS; k++) {
      Event e = event(random, PROVE_NOTHING, 300_000);
      run.sense(e.plant(), e.current(), e.onlyWithGas(), e.millis());
      assertThat(run.broken).as("%s, seed %d, event %d", board.name(), seed, k).isEmpty();
    }
    assertThat(run.stages)
        .as("%s, seed %d", board.name(), seed)
        .contains(Stage.TRIAL, Stage.SOFT_LOCKOUT)
        .doesNotContain(Stage.PROVING, Stage.RUN, Stage.FALSE_FLAME);
  }
}
