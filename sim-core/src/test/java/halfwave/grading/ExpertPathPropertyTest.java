package halfwave.grading;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.quiz.InventedClass;
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
      assertThat(path.cures()).as(which).isNotEmpty();
      assertThat(path.search()).as(which).hasSizeLessThan(path.moves().size());
      assertThat(path.search())
          .as(which)
          .noneMatch(m -> m.kind() == MoveClass.IRRELEVANT || m.kind() == MoveClass.REDUNDANT);
      List<MarkedMove> proof = path.moves().subList(path.search().size(), path.moves().size());
      assertThat(proof.stream().filter(m -> m.kind() == MoveClass.PROVES))
          .as(which)
          .hasSizeGreaterThan(1);
    }
  }
}
