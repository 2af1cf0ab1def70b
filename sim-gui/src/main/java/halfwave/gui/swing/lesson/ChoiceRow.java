package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.lesson.LessonView.Choice;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** One prediction: its letter, its text, and how many chose it. */
final class ChoiceRow extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Choice choice;
  private final JButton vote;

  ChoiceRow(Theme theme, Wording words, Choice choice, Runnable chosen) {
    super(new MigLayout("insets 0 2 0 6, gap 8, fillx, novisualpadding", "[][grow][]"));
    this.theme = theme;
    this.choice = choice;
    setOpaque(false);
    var p = theme.palette();
    vote = new JButton(choice.letter());
    vote.setFont(theme.heading());
    vote.setName("vote." + choice.letter());
    vote.getAccessibleContext()
        .setAccessibleName(words.text("lesson.vote", choice.letter(), choice.text()));
    vote.setToolTipText(words.text("lesson.vote", choice.letter(), choice.text()));
    vote.addActionListener(e -> chosen.run());
    add(vote, "top");
    String text = choice.right() ? "✓ " + choice.text() : choice.text();
    add(Lettering.paragraph(text, theme.body(), p.ink()), "growx, wmin 0");
    add(
        Lettering.label(
            choice.votes() == 0 ? "" : Integer.toString(choice.votes()), theme.heading(), p.ink()));
  }

  @Override
  public void setEnabled(boolean enabled) {
    super.setEnabled(enabled);
    vote.setEnabled(enabled);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    var p = theme.palette();
    g.setColor(p.ground());
    g.fill(new RoundRectangle2D.Double(0, 0, getWidth() * choice.share(), getHeight(), 8, 8));
    g.setColor(choice.right() ? p.accent() : p.hairline());
    RoundRectangle2D border =
        new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, 8, 8);
    g.draw(border);
    if (choice.right()) {
      g.draw(new RoundRectangle2D.Double(1.5, 1.5, getWidth() - 3, getHeight() - 3, 7, 7));
    }
    g.dispose();
  }
}
