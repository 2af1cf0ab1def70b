package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import halfwave.lesson.Step;
import halfwave.sequence.Moment;
import java.util.List;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A class watches a demonstration and votes. */
class LessonRobotTest extends WithWindow {

  private static final Demonstration SHOWN =
      ShippedDemonstrations.named("a-dirty-rod").orElseThrow();

  @BeforeEach
  void begin() {
    hand.tab("Lesson");
    hand.click("lesson." + SHOWN.name());
    hand.ready("lesson.forward");
  }

  private boolean says(String text) {
    return Hand.look(JTextArea.class, a -> text.equals(a.getText())).isPresent();
  }

  @Test
  void aClassGoesThroughAllOfItWithVotes() {
    List<Moment> moments = Playthrough.moments(SHOWN);
    var english = java.util.Locale.ENGLISH;
    for (int k = 0; k < SHOWN.steps().size(); k++) {
      Step step = SHOWN.steps().get(k);
      assertThat(says(step.heading().in(english))).as("heading of step %s", k).isTrue();
      assertThat(open.shown().moment()).as("step %s", k).isEqualTo(moments.get(k));
      for (int a = 0; a < step.answerCount(); a++) {
        hand.click("vote." + (char) ('A' + a));
      }
      if (step.holdsBack()) {
        hand.click("lesson.forward");
        watch(k == 1);
      }
      hand.click("lesson.forward");
      open.settle();
      if (k + 1 < SHOWN.steps().size()) {
        hand.ready("lesson.forward");
      }
    }
    assertThat(hand.there("lesson." + SHOWN.name())).as("the list is offered again").isTrue();
  }

  /** One stretch is watched to its end, in large pieces; of the others a class sees a moment. */
  private void watch(boolean whole) {
    open.want(new Intent.Pass(500));
    for (int p = 0; whole && p < 1000 && open.shown().showing() != null; p++) {
      open.want(new Intent.Pass(500));
    }
    assertThat(whole && open.shown().showing() != null).as("the stretch has an end").isFalse();
  }

  @Test
  void votesAreCountedByKeysAndTheAnswerIsMarked() {
    hand.takeKeyboard();
    hand.click("lesson.forward");
    hand.ready("lesson.forward");
    OpenWindow.onScreen(hand.find(DrawingPanel.class, "drawing")::requestFocusInWindow);
    open.settle();
    hand.type("abb");
    assertThat(Hand.look(javax.swing.JLabel.class, l -> "2".equals(l.getText()))).isPresent();
    hand.click("lesson.forward");
    open.want(new Intent.Play(false));
    String right = "✓ ";
    assertThat(Hand.look(JTextArea.class, a -> a.getText().startsWith(right))).isPresent();
    hand.click("lesson.stop");
    assertThat(hand.there("lesson." + SHOWN.name())).isTrue();
  }
}
