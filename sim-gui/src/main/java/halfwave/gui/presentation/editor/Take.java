package halfwave.gui.presentation.editor;

import halfwave.bench.Bench;
import halfwave.gui.presentation.bench.History;
import halfwave.gui.presentation.bench.State;
import halfwave.io.lesson.PlainDeeds;
import halfwave.lesson.Play;
import halfwave.message.Message;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Somebody works at the bench, and what is done is to become a step of a demonstration. What is
 * undone on the way was never done.
 *
 * @param start the moment at which it begins
 * @param paper where the bench lies: another one is no longer the bench of this recording
 */
public record Take(Moment start, State.Paper paper) {

  /** A length that is easy to read (ms). */
  private static final long LENGTH_MILLIS = 100;

  /**
   * What was recorded.
   *
   * @param acts what was done, at times from the beginning
   * @param lengthMillis how long it took (ms)
   * @param speedRatio the clock's speed at its end (1)
   * @param leftOut what was done and cannot be told in a file
   */
  public record Taken(List<Act> acts, long lengthMillis, double speedRatio, List<Message> leftOut) {
    /** Takes copies. */
    public Taken {
      acts = List.copyOf(acts);
      leftOut = List.copyOf(leftOut);
    }

    /** The same as a play, its length rounded up. */
    public Play play() {
      long length = (lengthMillis + LENGTH_MILLIS - 1) / LENGTH_MILLIS * LENGTH_MILLIS;
      double speed = Math.max(Play.SLOWEST_RATIO, Math.min(Play.FASTEST_RATIO, speedRatio));
      return new Play(acts, length, speed);
    }
  }

  /** Begins where the bench stands. */
  public static Take begin(State state) {
    return new Take(state.moment(), state.paper());
  }

  /** Whether it still is the same bench, and none of its time was undone that came before. */
  @SuppressWarnings("ReferenceEquality") // the same bench opened once more is another one
  public boolean goesOn(State now) {
    return now.paper() == paper
        && now.showing() == null
        && now.moment().timeMillis() >= start.timeMillis();
  }

  /** What was done up to now. */
  public Taken taken(State now) {
    List<Act> acts = new ArrayList<>();
    List<Message> leftOut = new ArrayList<>();
    Bench bench = start.bench();
    for (History.Entry entry : now.history().done()) {
      if (entry.standing().moment().timeMillis() < start.timeMillis()) {
        continue;
      }
      for (Act act : told(bench, entry)) {
        Optional<List<Deed>> plain = PlainDeeds.of(bench, act.deed());
        if (plain.isEmpty()) {
          leftOut.add(entry.said());
          continue;
        }
        for (Deed deed : plain.get()) {
          acts.add(new Act(act.timeMillis() - start.timeMillis(), deed));
          bench = Playback.done(bench, deed);
        }
      }
    }
    return new Taken(
        acts, now.moment().timeMillis() - start.timeMillis(), now.clock().timesReal(), leftOut);
  }

  /** Of a drag only where it ended, unless the straight way there leads through metal. */
  private static List<Act> told(Bench bench, History.Entry entry) {
    List<Act> all = entry.acts();
    long last = all.get(all.size() - 1).timeMillis();
    List<Act> end = all.stream().filter(a -> a.timeMillis() == last).toList();
    return Playback.impossible(bench, end).isEmpty() ? end : all;
  }
}
