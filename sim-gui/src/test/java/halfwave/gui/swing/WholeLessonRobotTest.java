package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.gui.presentation.bench.Intent;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JMenuItem;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lesson from beginning to end: shown, voted on, explored, examined, handed out. */
class WholeLessonRobotTest {

  private static final Demonstration SHOWN =
      ShippedDemonstrations.named("a-dirty-rod").orElseThrow();

  @TempDir private Path folder;

  @Test
  void anInstructorTeachesWithIt() throws Exception {
    try (OpenWindow open = OpenWindow.plain(folder)) {
      Hand hand = new Hand(open);
      Moment before = open.shown().moment();
      showAndExplore(open, hand);
      assertThat(open.shown().moment()).as("the bench is as it was").isEqualTo(before);
      seal(open, hand);
      assertThat(open.shown().moment()).isEqualTo(before);
      handOut(open, hand);
    }
  }

  /** Opens, votes, reveals, leaves for the bench, comes back, stops. */
  private void showAndExplore(OpenWindow open, Hand hand) {
    hand.tab("Lesson");
    hand.click("lesson." + SHOWN.name());
    hand.ready("lesson.forward");
    hand.click("lesson.forward");
    hand.ready("lesson.forward");
    hand.click("vote.A");
    hand.click("vote.B");
    Moment asked = open.shown().moment();
    hand.tab("Condition");
    Deed away = new Deed.Alter(Change.Turned.to(Parameter.ROD_UP, 0.03));
    open.want(new Intent.Act(List.of(away), 0), new Intent.StepOn(5000L));
    assertThat(open.shown().moment().bench()).isNotEqualTo(asked.bench());
    hand.tab("Lesson");
    hand.click("lesson.come-back");
    assertThat(open.shown().moment()).isEqualTo(asked);
    hand.click("lesson.forward");
    open.want(new Intent.Play(false));
    assertThat(Hand.look(JTextArea.class, a -> a.getText().startsWith("✓ "))).isPresent();
    hand.click("lesson.stop");
  }

  /** Seals, draws, diagnoses, reveals, looks back, puts the bench back. */
  private void seal(OpenWindow open, Hand hand) {
    hand.click("seal.hide");
    assertThat(open.shown().sealed()).isTrue();
    hand.click("seal.draw");
    open.await("the fault", () -> open.shown().seal().drawn() != null);
    hand.tab("Condition");
    assertThat(hand.there("covered")).as("the condition is covered").isTrue();
    assertThat(hand.there("knob.gas-pressure")).isFalse();
    JMenuItem begin =
        Hand.items(open.frame().getJMenuBar())
            .filter(i -> "menu-lesson.new".equals(i.getName()))
            .findFirst()
            .orElseThrow();
    assertThat(OpenWindow.onScreen(begin::isEnabled)).as("the editor would tell").isFalse();
    assertThat(begin.getToolTipText()).contains("hidden");
    hand.menu("paper.report");
    hand.answer("OK");
    assertThat(Hand.look(JFileChooser.class, c -> true)).as("nothing is told on paper").isEmpty();
    hand.tab("Work");
    open.want(new Intent.Labor(halfwave.work.Look.STATUS_LIGHT), new Intent.StepOn(1000L));
    hand.tab("Lesson");
    JComboBox<?> answer = hand.find(JComboBox.class, "seal.answer");
    OpenWindow.onScreen(
        () -> {
          answer.setSelectedIndex(1);
          return null;
        });
    hand.click("seal.reveal");
    String kind = Objects.requireNonNull(open.shown().seal().drawn()).kind().id();
    assertThat(kind).isNotBlank();
    assertThat(Hand.look(JTextArea.class, a -> a.getText().startsWith("It was: "))).isPresent();
    hand.click("seal.step.0");
    assertThat(open.shown().seal().opening().at()).isZero();
    hand.click("seal.end");
    assertThat(open.shown().seal()).isNull();
    assertThat(OpenWindow.onScreen(begin::isEnabled)).isTrue();
  }

  private void handOut(OpenWindow open, Hand hand) {
    hand.menu("paper.handout");
    hand.answer("OK");
    Path file = folder.resolve("handout.pdf");
    hand.choose(file);
    open.await("the handout", () -> Files.exists(file));
  }
}
