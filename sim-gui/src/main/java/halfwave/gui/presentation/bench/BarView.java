package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.gui.presentation.Wording;
import halfwave.io.OwnFile;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands above all panels.
 *
 * @param bench the bench's name
 * @param title title of the window
 * @param unsaved whether it was changed
 * @param call whether there is a call for heat
 * @param power whether the power is on
 * @param running whether the clock runs
 * @param speed how fast, in words
 * @param clock the time on the bench
 * @param undo what undo takes back, or null
 * @param redo what redo does again, or null
 */
public record BarView(
    String bench,
    String title,
    boolean unsaved,
    boolean call,
    boolean power,
    boolean running,
    String speed,
    String clock,
    @Nullable String undo,
    @Nullable String redo) {

  /** Speeds worth a step of their own. */
  public static final List<Double> SPEEDS =
      List.of(0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 30.0, 100.0, 300.0, 1000.0);

  /** The view of a state. */
  public static BarView of(State state, Wording words) {
    String name = benchName(state, words);
    History history = state.history();
    return new BarView(
        name,
        words.text(state.unsaved() ? "bar.title-unsaved" : "bar.title", name),
        state.unsaved(),
        state.moment().call(),
        state.moment().supply(),
        state.clock().running(),
        speed(state.clock().timesReal(), words),
        clock(state.moment().timeMillis()),
        history.done().isEmpty()
            ? null
            : words.text("bar.undo-act", words.sentences().sentence(history.last().said())),
        history.undone().isEmpty()
            ? null
            : words.text("bar.redo-act", words.sentences().sentence(history.lastUndone().said())));
  }

  private static String benchName(State state, Wording words) {
    return benchName(state.moment().bench().name(), state.paper().file(), words);
  }

  /** What people call a bench: its file, or what was shipped under its name. */
  static String benchName(String name, @Nullable Path file, Wording words) {
    if (file != null) {
      return OwnFile.stem(file);
    }
    return ShippedBenches.named(name).isPresent() ? words.text("bench." + name) : name;
  }

  /** A speed in words. */
  public static String speed(double timesReal, Wording words) {
    int decimals = timesReal < 1 ? 1 : 0;
    return words.text("bar.speed", words.sentences().quantities().fixed(timesReal, decimals));
  }

  private static String clock(long millis) {
    long seconds = millis / 1000;
    String tenth = Long.toString(millis % 1000 / 100);
    return seconds >= 3600
        ? String.format("%d:%02d:%02d", seconds / 3600, seconds / 60 % 60, seconds % 60)
        : String.format("%d:%02d.%s", seconds / 60, seconds % 60, tenth);
  }

  /** The boards that can work a bench, in their order. */
  public static List<BoardSettings> boards(Bench bench) {
    return ShippedBoards.all().stream()
        .filter(board -> board.ignition().fits(bench.design().ignition()))
        .toList();
  }
}
