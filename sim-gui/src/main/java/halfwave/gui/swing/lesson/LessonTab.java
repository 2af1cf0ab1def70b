package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.bench.State;
import halfwave.gui.swing.bench.SealPanel;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.TabSheet;
import halfwave.gui.swing.widget.Theme;
import java.awt.CardLayout;

/** What an instructor teaches with: demonstrations, or a bench whose fault a class has to find. */
public final class LessonTab extends TabSheet {

  private static final long serialVersionUID = 1L;
  private static final String LESSON = "lesson";
  private static final String SEAL = "seal";

  private final SealPanel offer;
  private final SealPanel seal;

  /**
   * A desk.
   *
   * @param player plays demonstrations, or lists them with the offer below
   * @param offer offers to hide the bench
   * @param seal the same while it is hidden, and afterwards
   */
  public LessonTab(Theme theme, LessonPanel player, SealPanel offer, SealPanel seal) {
    super(new CardLayout());
    this.offer = offer;
    this.seal = seal;
    add(player, LESSON);
    Column column = new Column(theme);
    column.add(seal, "growx, wmin 0");
    add(column.scrolled(), SEAL);
  }

  /** Shows what a state means for it. */
  public void show(State state) {
    FocusKeeper.around(this, () -> null, () -> fill(state));
  }

  private void fill(State state) {
    boolean sealed = state.seal() != null;
    if (!sealed) {
      offer.show(state);
    }
    // who is not seen yet cannot take the keyboard
    ((CardLayout) getLayout()).show(this, sealed ? SEAL : LESSON);
    seal.show(state);
  }
}
