package halfwave.gui.swing;

import halfwave.gui.presentation.State;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.function.BooleanSupplier;
import javax.swing.BorderFactory;
import javax.swing.JPanel;

/** What an instructor teaches with: demonstrations, or a bench whose fault a class has to find. */
final class LessonTab extends TabSheet {

  private static final long serialVersionUID = 1L;
  private static final String LESSON = "lesson";
  private static final String SEAL = "seal";

  private final SealPanel offer;
  private final SealPanel seal;
  private final transient BooleanSupplier showing;

  /**
   * A desk.
   *
   * @param offer offers to hide the bench
   * @param seal the same while it is hidden, and afterwards
   * @param showing whether a demonstration is under way
   */
  LessonTab(
      Theme theme, LessonPanel player, SealPanel offer, SealPanel seal, BooleanSupplier showing) {
    super(new CardLayout());
    this.offer = offer;
    this.seal = seal;
    this.showing = showing;
    JPanel lesson = new JPanel(new BorderLayout());
    lesson.setOpaque(false);
    lesson.add(player, BorderLayout.CENTER);
    int pad = theme.px(4);
    offer.setBorder(BorderFactory.createEmptyBorder(pad, pad, pad, pad));
    lesson.add(offer, BorderLayout.SOUTH);
    add(lesson, LESSON);
    Column column = new Column(theme);
    column.add(seal, "growx, wmin 0");
    add(column.scrolled(), SEAL);
  }

  void show(State state) {
    FocusKeeper.around(this, () -> null, () -> fill(state));
  }

  private void fill(State state) {
    boolean sealed = state.seal() != null;
    offer.setVisible(!showing.getAsBoolean());
    if (!sealed) {
      offer.show(state);
    }
    // who is not seen yet cannot take the keyboard
    ((CardLayout) getLayout()).show(this, sealed ? SEAL : LESSON);
    seal.show(state);
  }
}
