package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.sequence.Sample;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is kept of the past has an end, and steps of undo share it. */
class RecordingTest {

  /** More than the history keeps. */
  private static final int ACTS = 520;

  private static final long HOUR_MILLIS = 3_600_000;

  @Test
  void aTapeIsTheListThatItWasMadeOf() {
    List<Integer> plain = new ArrayList<>();
    Tape<Integer> tape = Tape.of(plain);
    // pieces that end within, at and after the end of what is added
    for (int more : new int[] {0, 1, 3, Tape.PIECE - 4, 1, Tape.PIECE, 3 * Tape.PIECE + 7}) {
      List<Integer> next = IntStream.range(plain.size(), plain.size() + more).boxed().toList();
      plain.addAll(next);
      tape = tape.then(next);
      assertThat(tape).isEqualTo(plain);
    }
    for (int count : new int[] {0, 1, Tape.PIECE, Tape.PIECE + 1, plain.size(), 100_000}) {
      int some = Math.min(count, plain.size());
      assertThat(tape.first(count)).as("first %s", count).isEqualTo(plain.subList(0, some));
      List<Integer> last = tape.last(count);
      assertThat(last).as("last %s", count).endsWith(last(plain, some));
      assertThat(last.size()).as("last %s", count).isBetween(some, some + Tape.PIECE);
    }
  }

  private static Integer[] last(List<Integer> all, int count) {
    return all.subList(all.size() - count, all.size()).toArray(Integer[]::new);
  }

  @Test
  void anHourIsKept() {
    State state = Benches.later(Benches.opened(), 2 * HOUR_MILLIS);
    assertThat(state.recording().samples().size())
        .isBetween(Recording.MOST_SAMPLES, Recording.MOST_SAMPLES + Tape.PIECE);
    assertThat(state.recording().events().size()).isLessThan(Recording.MOST_EVENTS + Tape.PIECE);
  }

  @Test
  void stepsOfUndoShareWhatTheyRecorded() {
    State state = Benches.later(Benches.opened(), HOUR_MILLIS);
    for (int k = 0; k < ACTS; k++) {
      state = Benches.later(act(state, k), 200);
    }
    assertThat(state.history().done()).hasSize(History.MOST);
    // the hour, and of each step its open piece; a copy of the hour for each step would be
    // nine million
    assertThat(kept(state)).isLessThan(Recording.MOST_SAMPLES + (ACTS + 2L) * Tape.PIECE);
  }

  @Test
  void stepsOfUndoThatLieFarApartForgetTheirHours() {
    State state = Benches.opened();
    int steps = 3 * History.WHOLE;
    for (int k = 0; k < steps; k++) {
      state = Benches.later(act(state, k), HOUR_MILLIS);
    }
    int whole = Recording.MOST_SAMPLES + Tape.PIECE;
    assertThat(kept(state)).isLessThan((History.WHOLE + 1L) * whole + steps * 2L * Tape.PIECE);
    for (int k = 1; k < steps; k++) {
      state = Benches.after(state, new Intent.Undo());
      assertThat(state.recording().samples().size())
          .as("undo %s", k)
          .isGreaterThanOrEqualTo(k <= History.WHOLE ? Recording.MOST_SAMPLES : Tape.PIECE);
    }
  }

  private static State act(State state, int k) {
    return Benches.with(state, Parameter.PRIMARY_AIR, k % 2 == 0 ? 0.6 : 0.61);
  }

  /** How many samples the history holds, each piece that steps share counted once. */
  private static long kept(State state) {
    Set<List<Sample>> pieces = Collections.newSetFromMap(new IdentityHashMap<>());
    for (History.Entry entry : state.history().done()) {
      pieces.addAll(((Tape<Sample>) entry.standing().recording().samples()).pieces());
    }
    return pieces.stream().mapToLong(List::size).sum();
  }
}
