package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Theme;
import halfwave.quiz.Phase;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/**
 * The five stages; the one that a call is at is marked by more than a colour. Where they have no
 * room beside each other only that one has its name.
 */
final class PhaseStrip extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final Map<Phase, Stage> stages = new EnumMap<>(Phase.class);

  PhaseStrip(Theme theme, Wording words) {
    super(new MigLayout("insets 0, gap 0, novisualpadding"));
    this.theme = theme;
    this.words = words;
    setName("practice.phases");
    setOpaque(false);
    for (Phase phase : Phase.values()) {
      Stage stage = new Stage();
      stages.put(phase, stage);
      add(stage);
    }
  }

  /** As wide as all the names. */
  @Override
  public Dimension getPreferredSize() {
    int width = stages.values().stream().mapToInt(Stage::fullWidth).sum();
    return new Dimension(width, super.getPreferredSize().height);
  }

  @Override
  public void doLayout() {
    boolean room = getPreferredSize().width <= getWidth();
    stages.values().forEach(s -> s.shorten(!room));
    super.doLayout();
  }

  void show(@Nullable Phase now) {
    for (Phase phase : Phase.values()) {
      boolean here = phase == now;
      Stage stage = stages.get(phase);
      if (stage != null) {
        stage.show(words.heading(phase), phase.ordinal() + 1, here);
      }
    }
    String spoken =
        now == null
            ? ""
            : words.text(
                "practice.phase-spoken",
                now.ordinal() + 1,
                Phase.values().length,
                words.sentences().name(now));
    getAccessibleContext().setAccessibleName(words.text("practice.phase", spoken));
  }

  /** One stage. */
  private final class Stage extends JLabel {
    private static final long serialVersionUID = 1L;

    private String name = "";
    private int number;
    private boolean here;
    private boolean shortened;

    Stage() {
      int pad = theme.px(6);
      setBorder(BorderFactory.createEmptyBorder(pad / 2, pad, pad, 2 * pad));
    }

    void show(String newName, int newNumber, boolean now) {
      name = newName;
      number = newNumber;
      here = now;
      write();
      setToolTipText(full());
      getAccessibleContext().setAccessibleName(full());
      setFont(now ? theme.heading() : theme.body());
      setForeground(now ? theme.palette().accent() : theme.palette().softInk());
    }

    private String full() {
      return number + ". " + name;
    }

    private void write() {
      setText(shortened && !here ? number + "." : full());
    }

    void shorten(boolean wanted) {
      if (wanted != shortened) {
        shortened = wanted;
        write();
      }
    }

    int fullWidth() {
      return getInsets().left + getFontMetrics(getFont()).stringWidth(full()) + getInsets().right;
    }

    @Override
    protected void paintComponent(Graphics g) {
      super.paintComponent(g);
      int thick = theme.px(here ? 4 : 1);
      g.setColor(here ? theme.palette().accent() : theme.palette().border());
      g.fillRect(0, getHeight() - thick, getWidth(), thick);
    }
  }
}
