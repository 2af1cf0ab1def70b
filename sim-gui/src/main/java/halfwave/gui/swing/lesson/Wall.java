package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.bench.Workbench;
import java.awt.Rectangle;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JFrame;
import org.jspecify.annotations.Nullable;

/** The picture for a class, while it is on the wall. */
public final class Wall {

  private final JFrame over;
  private final Workbench workbench;
  private final Function<Runnable, Projector> make;
  private final Consumer<Boolean> told;
  private @Nullable Projector shown;

  /**
   * Nothing is on the wall.
   *
   * @param over the instructor's window
   * @param make makes a picture in the language and look of then; it runs what it is given when it
   *     is closed by hand
   * @param told is told whether there is a picture
   */
  public Wall(
      JFrame over,
      Workbench workbench,
      Function<Runnable, Projector> make,
      Consumer<Boolean> told) {
    this.over = over;
    this.workbench = workbench;
    this.make = make;
    this.told = told;
  }

  /** Puts the picture on the wall, or takes it away. */
  public void turn() {
    turn(Projector.screen(over));
  }

  /** The same in a place that a test chooses. */
  public void turn(Rectangle place) {
    if (shown != null) {
      close();
    } else if (workbench.ready()) {
      Projector made = make.apply(this::closed);
      shown = made;
      made.open(place);
    }
    told.accept(shown != null);
  }

  private void closed() {
    shown = null;
    told.accept(false);
  }

  /** The picture, or null. */
  public @Nullable Projector shown() {
    return shown;
  }

  /** The class goes on seeing what it sees now. */
  public void freeze() {
    if (shown != null) {
      shown.freeze();
    }
  }

  /** The flame sways on the wall too. */
  public void sway(double seconds) {
    if (shown != null) {
      shown.sway(seconds);
    }
  }

  /** Takes it away without a word. */
  public void close() {
    if (shown != null) {
      shown.close();
      shown = null;
    }
  }
}
