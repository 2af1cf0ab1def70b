package halfwave.gui.presentation.bench;

import halfwave.message.Message;
import halfwave.sequence.Act;
import java.util.ArrayList;
import java.util.List;

/**
 * Where undo and redo lead.
 *
 * @param done the acts, oldest first, each with what was before it
 * @param undone acts that were undone, the next to redo last, each with what was after it
 */
public record History(List<Entry> done, List<Entry> undone) {

  /** So many steps lead back. */
  static final int MOST = 500;

  /** So many of them lead back to all that was recorded by then; the others to what still is. */
  static final int WHOLE = 10;

  /** Nothing was done. */
  public static final History EMPTY = new History(List.of(), List.of());

  /**
   * An act and what to return to.
   *
   * @param said what the act was
   * @param standing what was before it, or after it where it was undone
   * @param gesture the gesture that it belongs to; zero: none
   * @param acts what was done, at times of the furnace's clock; of a gesture all that led to its
   *     end
   */
  public record Entry(Message said, Standing standing, long gesture, List<Act> acts) {
    /** Takes a copy. */
    public Entry {
      acts = List.copyOf(acts);
    }

    /** The same act, that leads to no more of the past than is recorded now, or to its end. */
    Entry sharing(Recording newest) {
      Recording own = standing.recording();
      Recording shared = own.sharedWith(newest);
      return shared == own ? this : facing(standing.with(shared));
    }

    /** The same act with what lies at its other end. */
    Entry facing(Standing other) {
      return new Entry(said, other, gesture, acts);
    }
  }

  History after(Entry entry) {
    List<Entry> longer = new ArrayList<>(done);
    longer.add(entry);
    if (longer.size() > MOST) {
      longer.remove(0);
    }
    Recording newest = entry.standing().recording();
    for (int k = 0; k < longer.size() - 1 - WHOLE; k++) {
      longer.set(k, longer.get(k).sharing(newest));
    }
    return new History(List.copyOf(longer), List.of());
  }

  /** The last act gets other words and is longer, as a gesture goes on. */
  History longer(Message said, List<Act> more) {
    List<Entry> same = new ArrayList<>(done);
    Entry last = same.remove(same.size() - 1);
    List<Act> acts = new ArrayList<>(last.acts());
    acts.addAll(more);
    same.add(new Entry(said, last.standing(), last.gesture(), acts));
    return new History(List.copyOf(same), undone);
  }

  /**
   * What came of an act, just before the next one.
   *
   * @param index which act, from zero
   * @param present what comes after the last one
   */
  public Standing outcome(int index, Standing present) {
    return index + 1 < done.size() ? done.get(index + 1).standing() : present;
  }

  boolean goesOn(long gesture) {
    return gesture != 0 && !done.isEmpty() && last().gesture() == gesture;
  }

  Entry last() {
    return done.get(done.size() - 1);
  }

  Entry lastUndone() {
    return undone.get(undone.size() - 1);
  }

  History undoneTo(Entry present) {
    List<Entry> more = new ArrayList<>(undone);
    more.add(present);
    return new History(done.subList(0, done.size() - 1), List.copyOf(more));
  }

  History redoneFrom(Entry present) {
    List<Entry> more = new ArrayList<>(done);
    more.add(present);
    return new History(List.copyOf(more), undone.subList(0, undone.size() - 1));
  }
}
