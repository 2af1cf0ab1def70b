package halfwave.gui.swing;

import halfwave.gui.presentation.State;
import halfwave.gui.presentation.StripView;
import halfwave.gui.presentation.Wording;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The timeline strip with the choice of how much it shows. */
final class StripPanel extends Plate {

  private static final long serialVersionUID = 1L;
  private static final List<Long> SPANS_SECONDS = List.of(30L, 90L, 180L, 600L, 3600L);

  private final transient Wording words;
  private final StripCanvas canvas;
  private final JComboBox<String> span;
  private @Nullable transient State state;

  StripPanel(Theme theme, Wording words) {
    super(theme, words.text("strip.title"));
    this.words = words;
    canvas = new StripCanvas(theme);
    span = new JComboBox<>(SPANS_SECONDS.stream().map(this::spanName).toArray(String[]::new));
    span.setSelectedIndex(2);
    span.setName("strip.span");
    span.setToolTipText(words.text("strip.span"));
    span.getAccessibleContext().setAccessibleName(words.text("strip.span"));
    span.addActionListener(e -> refresh());
    JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow][]"));
    head.setOpaque(false);
    head.add(Lettering.label(words.text("strip.title"), theme.heading(), theme.palette().ink()));
    head.add(span);
    add(head, BorderLayout.NORTH);
    add(canvas, BorderLayout.CENTER);
  }

  private String spanName(long seconds) {
    return seconds < 120
        ? words.text("strip.span-seconds", seconds)
        : words.text("strip.span-minutes", seconds / 60);
  }

  void show(State newState) {
    state = newState;
    refresh();
  }

  private void refresh() {
    if (state != null && canvas.getWidth() > 0) {
      long millis = 1000 * SPANS_SECONDS.get(span.getSelectedIndex());
      StripView view = StripView.of(state, words, millis, canvas.columns());
      canvas.show(view);
      canvas.getAccessibleContext().setAccessibleName(view.spoken());
    }
  }
}
