package halfwave.grading;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Check;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Move;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An expert begins with the best check, works safely, and ends at a furnace that is whole. */
class ExpertPathPropertyTest {

  @Test
  void everyFurnaceOfTheQuizIsMadeWholeAndProved() {
    Grader grader = InventedClass.grader();
    for (ServiceCall call : grader.quiz().calls()) {
      Variant variant = Variant.numbered(call, grader.quiz().seed(), 1);
      Assessor assessor = grader.assessor(call);
      ExpertPath path = ExpertPath.of(assessor, variant, InventedClass.appearances());
      String which = call.name();
      assertThat(path.end().whole()).as(which).isTrue();
      assertThat(path.end().log()).as(which).allMatch(d -> d.danger() == null);
      assertThat(path.steps().stream().mapToInt(ExpertPath.Step::minutes).sum())
          .as(which)
          .isEqualTo(path.end().minutes());
      assertThat(path.steps().get(0).move())
          .as(which)
          .isEqualTo(
              new Move.Checked(
                  assessor.after(List.of()).advice().nextCheck().orElseThrow().check()));
      assertThat(path.cures()).as(which).isNotEmpty();
      int last = path.steps().size() - 1;
      assertThat(path.steps().get(last - 1).move())
          .as(which)
          .isEqualTo(new Move.Checked(new Check.Call()));
      assertThat(path.search()).as(which).hasSizeLessThan(path.steps().size());
    }
  }
}
