package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.Healthy;
import halfwave.gui.swing.widget.Theme;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/**
 * A chart that has to be computed in the background. It asks anew when the bench has come to rest
 * after a change, and keeps the old picture until the new one is there.
 *
 * @param <Q> what is asked
 * @param <A> what is answered
 */
abstract class AskingPanel<Q, A> extends ChartPanel {

  private static final long serialVersionUID = 1L;

  /** A hand that drags pauses no longer than this (ms). */
  private static final int REST_MILLIS = 180;

  final transient Inquiry<Q, A> inquiry;
  private final Waiting waiting;
  private final JButton again;
  private final Timer rest;
  private @Nullable transient State state;
  private @Nullable transient Q asked;

  /** What the picture was made from. */
  private transient List<Object> rendered = List.of();

  AskingPanel(
      Theme theme,
      Wording words,
      String name,
      Inquiry.Worker<Q, A> worker,
      Executor background,
      Consumer<Throwable> failed) {
    super(theme, name);
    inquiry = new Inquiry<>(background, SwingUtilities::invokeLater, worker, this::changed, failed);
    waiting = new Waiting(theme, words, inquiry, this::cancelled);
    again = new JButton(words.text("chart.again"));
    again.setVisible(false);
    again.addActionListener(e -> ask());
    rest = new Timer(REST_MILLIS, e -> ask());
    rest.setRepeats(false);
  }

  /** Puts progress and button after the panel's own controls. */
  final void waitingControls() {
    control(waiting);
    control(again);
  }

  /** What a state makes one want to know. */
  abstract Q question(State present);

  /** The answer, or the mark in it, has changed. */
  abstract void render();

  final @Nullable State state() {
    return state;
  }

  @Override
  final void show(State newState, @Nullable Healthy healthy) {
    state = newState;
    Q wanted = question(newState);
    if (!wanted.equals(asked)) {
      boolean first = asked == null;
      asked = wanted;
      if (first) {
        ask();
      } else {
        rest.restart();
      }
    }
    refresh();
  }

  /** States come many times a second, most without any news for this chart. */
  private void refresh() {
    A answer = inquiry.answer();
    State now = state;
    if (answer == null || now == null) {
      render();
      return;
    }
    List<Object> from = List.of(answer, question(now), now.moment().settings());
    if (!from.equals(rendered)) {
      rendered = from;
      render();
    }
  }

  /** Another question of the panel's own. */
  final void asksOtherwise() {
    if (state != null) {
      asked = question(state);
      ask();
    }
  }

  private void ask() {
    Q wanted = asked;
    if (wanted != null) {
      again.setVisible(false);
      inquiry.ask(wanted);
      waiting.update();
    }
  }

  private void changed() {
    waiting.update();
    refresh();
  }

  private void cancelled() {
    again.setVisible(true);
  }

  @Override
  void away() {
    rest.stop();
    if (inquiry.busy()) {
      inquiry.cancel();
      asked = null;
    }
    waiting.update();
  }
}
