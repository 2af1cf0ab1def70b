package halfwave.gui.swing.bench;

import halfwave.board.Ignition;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.WorkCard;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.TabSheet;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Looks, repairs and mishaps, and what came of those that were done. */
public final class WorkPanel extends TabSheet {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Workbench workbench;
  private final Column column;
  private final JTextArea log;

  /** In no button group: the Tab key would pass over all but the chosen one. */
  private final Map<WorkCard.Sort, JToggleButton> sorts = new EnumMap<>(WorkCard.Sort.class);

  private WorkCard.Sort sort = WorkCard.Sort.LOOK;
  private @Nullable transient State state;
  private @Nullable Ignition shownFor;

  /** A panel. */
  public WorkPanel(Theme theme, Wording words, Workbench workbench) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    JPanel head =
        new JPanel(new MigLayout("insets 8 4 6 4, gap 4, fillx, novisualpadding", "[grow,fill]"));
    head.setOpaque(false);
    for (WorkCard.Sort s : WorkCard.Sort.values()) {
      JToggleButton button = new JToggleButton(words.text("work." + key(s)), s == sort);
      button.setName("work.sort." + key(s));
      button.addActionListener(e -> sorted(s));
      sorts.put(s, button);
      head.add(button);
    }
    add(head, BorderLayout.NORTH);
    column = new Column(theme);
    add(column.scrolled(), BorderLayout.CENTER);
    log = Lettering.paragraph(words.text("work.log-empty"), theme.body(), theme.palette().ink());
    log.setName("work.log");
    JPanel foot = new JPanel(new MigLayout("insets 8 4 2 4, fillx", "[grow]"));
    foot.setOpaque(false);
    foot.add(
        Lettering.label(words.text("work.log"), theme.heading(), theme.palette().ink()), "wrap");
    foot.add(log, "growx, wmin 0");
    add(foot, BorderLayout.SOUTH);
  }

  private static String key(WorkCard.Sort sort) {
    return switch (sort) {
      case LOOK -> "look";
      case REPAIR -> "repair";
      case MISHAP -> "mishap";
    };
  }

  private void sorted(WorkCard.Sort other) {
    sort = other;
    sorts.forEach((s, button) -> button.setSelected(s == other));
    shownFor = null;
    if (state != null) {
      show(state);
    }
  }

  /** Shows the work that can be done in a state. */
  public void show(State newState) {
    state = newState;
    Ignition ignition = newState.moment().bench().design().ignition();
    if (ignition != shownFor) {
      shownFor = ignition;
      column.removeAll();
      for (WorkCard card : WorkCard.all(sort, newState, words)) {
        column.add(new WorkRow(theme, words, workbench, card), "growx, wmin 0, wrap");
      }
      column.revalidate();
      column.repaint();
    }
    List<String> done = WorkCard.done(newState, words);
    String text =
        done.isEmpty()
            ? words.text("work.log-empty")
            : String.join("\n", done.subList(0, Math.min(4, done.size())))
                + "\n"
                + words.text("work.spent", WorkCard.minutesSpent(newState));
    if (!log.getText().equals(text)) {
      log.setText(text);
      revalidate();
    }
  }
}
