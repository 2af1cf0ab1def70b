package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.Intent;
import halfwave.io.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import halfwave.lesson.Step;
import halfwave.sequence.Moment;
import java.nio.file.Path;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class watches a demonstration and votes. */
class LessonRobotTest {

  private static final Demonstration SHOWN =
      ShippedDemonstrations.named("a-dirty-rod").orElseThrow();

  @TempDir private Path folder;
  private OpenWindow open;
  private Hand hand;

  @BeforeEach
  void open() {
    open = OpenWindow.plain(folder);
    hand = new Hand(open);
    hand.tab("Lesson");
    hand.click("lesson." + SHOWN.name());
    forwardIsReady();
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private void forwardIsReady() {
    open.await(
        "the step",
        () ->
            Hand.look(AbstractButton.class, b -> "lesson.forward".equals(b.getName()))
                .filter(AbstractButton::isEnabled)
                .isPresent());
    open.settle();
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
        forwardIsReady();
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
    forwardIsReady();
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
