package halfwave.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Disorder;
import halfwave.board.BoardSettings;
import halfwave.board.Stage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What holds whatever is done to an appliance. */
class SequencePropertyTest {

  private static final boolean DEEP = Boolean.getBoolean("halfwave.deep");
  private static final int CUT_RUNS = DEEP ? 500 : 50;
  private static final int SAFETY_RUNS = DEEP ? 20_000 : 800;
  private static final long UNTIL_MILLIS = 150_000;

  /** Played at once, in pieces, and by another instance: the same to the last bit. */
  @Test
  void cutMakesNoDifference() {
    Sequence shared = new Sequence();
    for (int seed = 0; seed < CUT_RUNS; seed++) {
      RandomCalls random = new RandomCalls(seed);
      Moment start = random.start();
      List<Act> acts = random.acts(UNTIL_MILLIS);
      Segment whole = shared.advance(start, UNTIL_MILLIS, acts);

      Timeline pieces = Timeline.from(start);
      for (long cut : random.cuts(UNTIL_MILLIS, acts)) {
        pieces = piece(shared, pieces, cut, acts);
      }
      pieces = piece(shared, pieces, UNTIL_MILLIS, acts);

      assertThat(pieces.events()).as("seed %d", seed).isEqualTo(whole.events());
      assertThat(pieces.samples()).as("seed %d", seed).isEqualTo(whole.samples());
      assertThat(pieces.end()).as("seed %d", seed).isEqualTo(whole.end());
      // one that has computed nothing yet; costly, so not for every seed
      Sequence another = seed % 10 == 0 ? new Sequence() : shared;
      assertThat(another.advance(start, UNTIL_MILLIS, acts)).as("seed %d", seed).isEqualTo(whole);
    }
  }

  private static Timeline piece(Sequence sequence, Timeline before, long until, List<Act> acts) {
    long from = before.end().timeMillis();
    List<Act> now =
        acts.stream().filter(a -> a.timeMillis() >= from && a.timeMillis() < until).toList();
    return before.then(sequence.advance(before.end(), until, now));
  }

  /**
   * The gas valve, seen from outside: from what the samples say the house and the appliance did,
   * and from nothing that the board says of itself but its outputs.
   */
  @Test
  void gasValveIsSafe() {
    Sequence shared = new Sequence();
    int opened = 0;
    for (int seed = 0; seed < SAFETY_RUNS; seed++) {
      RandomCalls random = new RandomCalls(1_000_000 + seed);
      Moment start = random.start();
      List<Act> acts = random.acts(UNTIL_MILLIS);
      opened += check(shared.advance(start, UNTIL_MILLIS, acts), acts, "seed " + seed);
    }
    // the runs are not safe because nothing ever happened
    assertThat(opened).isGreaterThan(SAFETY_RUNS / 2);
  }

  private static int check(Segment run, List<Act> acts, String seed) {
    BoardSettings settings = run.start().settings();
    long unprovedMost = settings.times().trialMillis() + settings.sensing().responseMillis();
    boolean supply = false;
    boolean call = false;
    boolean wasOpen = false;
    long lastProof = 0;
    int opened = 0;
    int next = 0;
    for (Sample sample : run.samples()) {
      while (next < acts.size() && acts.get(next).timeMillis() <= sample.timeMillis()) {
        Deed deed = acts.get(next++).deed();
        supply = deed instanceof Deed.Supply s ? s.on() : supply;
        call = deed instanceof Deed.Call c ? c.on() : call;
      }
      boolean open = sample.outputs().gas();
      boolean opens = open && !wasOpen;
      opened += opens ? 1 : 0;
      lastProof = opens || sample.signal().proves() ? sample.timeMillis() : lastProof;
      assertThat(!open || (supply && call)).as("%s: power and call %s", seed, sample).isTrue();
      assertThat(!open || sample.timeMillis() - lastProof <= unprovedMost)
          .as("%s: unproved at %s", seed, sample)
          .isTrue();
      assertThat(opens && sample.signal().proves())
          .as("%s: false flame at %s", seed, sample)
          .isFalse();
      assertThat(open && sample.stage().lockout()).as("%s: lockout %s", seed, sample).isFalse();
      wasOpen = open;
    }
    return opened;
  }

  /** Whatever the signal, with the door off there is no gas. */
  @Test
  void doorCutsTheGas() {
    Segment run =
        Calls.play(
            Calls.benchFor(Calls.board("spark-three-trials")),
            Calls.board("spark-three-trials"),
            4 * Calls.MINUTE,
            Calls.upset(2 * Calls.MINUTE, Disorder.DOOR_OPEN, true));
    assertThat(run.samples())
        .filteredOn(s -> s.timeMillis() >= 2 * Calls.MINUTE)
        .isNotEmpty()
        .noneMatch(s -> s.outputs().gas());
    assertThat(run.end().board().stage()).isEqualTo(Stage.OFF);
  }

  /** Hours of lockout are one jump: no samples once everything has come to rest. */
  @Test
  void restCostsNothing() {
    BoardSettings settings = Calls.board("carbide-three-hours");
    Segment run =
        Calls.play(
            Calls.benchFor(settings),
            settings,
            4 * Calls.HOUR,
            Calls.upset(0, Disorder.GAS_SHUT, true));
    long lockout = Calls.entries(run, Stage.SOFT_LOCKOUT).get(0);
    assertThat(run.samples())
        .filteredOn(
            s ->
                s.timeMillis() > lockout + 30 * Calls.MINUTE
                    && s.timeMillis() < lockout + 3 * Calls.HOUR)
        .isEmpty();
  }
}
