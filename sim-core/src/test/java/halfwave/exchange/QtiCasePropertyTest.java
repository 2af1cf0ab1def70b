package halfwave.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Belief;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.grading.Assessor;
import halfwave.quiz.InventedClass;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A question has one right answer: what is read points to it, and to none of the others. */
class QtiCasePropertyTest {

  @Test
  void theKeyIsLikelyAfterAllReadingsAndNoOtherAnswerIs() {
    for (ServiceCall call : InventedClass.quiz().calls()) {
      Assessor assessor = InventedClass.grader().assessor(call);
      Variant variant = Variant.numbered(call, InventedClass.quiz().seed(), 1);
      QtiCase question = QtiCase.of(assessor, variant, InventedClass.appearances());
      Belief belief = assessor.after(List.of()).belief();
      for (Map.Entry<Check, Outcome> e : question.found().entrySet()) {
        belief = belief.after(new Entry.Observed(e.getKey(), e.getValue()));
      }
      Map<Cause, Double> now = belief.now();
      assertThat(question.choices()).contains(variant.cause());
      double key = now.getOrDefault(variant.cause(), 0.0);
      for (Cause choice : question.choices()) {
        double most = choice.equals(variant.cause()) ? key : key / 20;
        assertThat(now.getOrDefault(choice, 0.0)).as(choice.id()).isLessThanOrEqualTo(most);
      }
      assertThat(key).as(call.name()).isGreaterThan(0.1);
      assertThat(question.telling()).as(call.name()).isNotNull();
    }
  }
}
