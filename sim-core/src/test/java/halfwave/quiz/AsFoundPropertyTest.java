package halfwave.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a worksheet prints is what a learner reads on that furnace, in whatever order he asks. */
class AsFoundPropertyTest {

  private static final long SEED = 4;

  @Test
  void aLearnerWhoRepairsNothingReadsTheSameInAnyOrder() {
    Random random = new Random(SEED);
    for (ServiceCall call : InventedClass.quiz().calls()) {
      Variant variant = Variant.numbered(call, InventedClass.quiz().seed(), 1);
      Map<Check, Outcome> found = AsFound.of(variant, InventedClass.appearances());
      assertThat(List.copyOf(found.keySet())).isEqualTo(call.checks());
      List<Check> order = new ArrayList<>(call.checks());
      Collections.shuffle(order, random);
      Visit visit = Visit.begin(variant, InventedClass.appearances(), false);
      for (Check check : order.subList(0, 8)) {
        Move.Checked move = new Move.Checked(check);
        visit = Ready.forMove(visit, move);
        assertThat(visit.refusal(move)).as("seed " + SEED + ", " + check.id()).isEmpty();
        visit = visit.after(move);
        Done done = visit.log().get(visit.log().size() - 1);
        assertThat(done.danger()).isNull();
        assertThat(done.outcome()).as(check.id()).isEqualTo(found.get(check));
      }
    }
  }
}
