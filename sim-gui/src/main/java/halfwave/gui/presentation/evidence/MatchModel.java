package halfwave.gui.presentation.evidence;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.bench.State;
import halfwave.io.AtomicFile;
import halfwave.io.evidence.ReadingsFile;
import halfwave.io.evidence.ReadingsText;
import halfwave.matching.Matching;
import halfwave.matching.TakenReading;
import halfwave.matching.Unknown;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Readings of a furnace, and the bench that fits them. Belongs to the screen's thread. */
public final class MatchModel {

  /** What is to be fitted. */
  private record Question(Bench start, Set<Unknown> unknowns, List<TakenReading> readings) {}

  private final Inquiry<Question, MatchAnswer> inquiry;
  private final Listeners listeners = new Listeners();
  private List<TakenReading> readings = List.of();

  /** What somebody chose, or null: what is usual. */
  private @Nullable Set<Unknown> chosen;

  /**
   * Nothing was read yet.
   *
   * @param background runs a fit; it may keep nobody else waiting
   * @param screen runs what touches panels
   * @param failed is told of an error in the program itself
   */
  public MatchModel(Executor background, Executor screen, Consumer<Throwable> failed) {
    inquiry = new Inquiry<>(background, screen, MatchModel::answer, listeners::tell, failed);
  }

  private static void answer(Question asked, Inquiry.Hearing<MatchAnswer> hearing) {
    hearing.tell(
        new MatchAnswer(
            asked.start,
            asked.unknowns,
            asked.readings,
            Matching.of(asked.start, asked.unknowns, asked.readings)));
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  /** What was read, in order. */
  public List<TakenReading> readings() {
    return readings;
  }

  /** One more reading. */
  public void add(TakenReading reading) {
    List<TakenReading> more = new ArrayList<>(readings);
    more.add(reading);
    readings(more);
  }

  /** Takes a reading away. */
  public void remove(int index) {
    List<TakenReading> fewer = new ArrayList<>(readings);
    fewer.remove(index);
    readings(fewer);
  }

  /** Other readings. */
  public void readings(List<TakenReading> others) {
    readings = List.copyOf(others);
    listeners.tell();
  }

  /**
   * Reads them from a file.
   *
   * @throws halfwave.io.BadInputException if it cannot be used
   */
  public void open(Path file) {
    readings(ReadingsFile.read(file));
  }

  /**
   * Writes them to a file.
   *
   * @throws halfwave.io.BadInputException if it cannot be written
   */
  public void save(Path file) {
    AtomicFile.write(file, ReadingsText.of(readings));
  }

  /** What will be fitted. */
  public Set<Unknown> unknowns() {
    return chosen == null ? Matching.usual(readings) : chosen;
  }

  /** Fits one more number, or one less. */
  public void choose(Unknown unknown, boolean fitted) {
    Set<Unknown> others = EnumSet.noneOf(Unknown.class);
    others.addAll(unknowns());
    if (fitted) {
      others.add(unknown);
    } else {
      others.remove(unknown);
    }
    chosen = others;
    listeners.tell();
  }

  /** Whether there is something to fit, and something to fit it to. */
  public boolean ready() {
    return !readings.isEmpty() && !unknowns().isEmpty() && !inquiry.busy();
  }

  /** Fits the bench that is open; of a sealed one only its kind. */
  public void fit(State shown) {
    if (ready()) {
      inquiry.ask(new Question(start(shown), Set.copyOf(unknowns()), readings));
      listeners.tell();
    }
  }

  /** A bench that a class has to diagnose is not given away. */
  static Bench start(State shown) {
    Bench bench = shown.moment().bench();
    return shown.sealed() ? bench.with(Condition.HEALTHY) : bench;
  }

  /** Whether a fit is being made. */
  public boolean busy() {
    return inquiry.busy();
  }

  /** Gives it up. */
  public void cancel() {
    inquiry.cancel();
    listeners.tell();
  }

  /** The last answer, or null before the first. */
  public @Nullable MatchAnswer answer() {
    return inquiry.answer();
  }

  /** Whether the answer is to what is there now. */
  public boolean fresh() {
    MatchAnswer last = inquiry.answer();
    return last != null && last.readings().equals(readings) && last.unknowns().equals(unknowns());
  }
}
