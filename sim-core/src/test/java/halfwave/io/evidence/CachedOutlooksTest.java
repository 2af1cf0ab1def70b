package halfwave.io.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Case;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Outlook;
import halfwave.io.quiz.ShippedQuizzes;
import halfwave.quiz.ServiceCall;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Outlooks are kept while they are needed, and only the last few of them. */
class CachedOutlooksTest {

  private static final CachedOutlooks OUTLOOKS =
      new CachedOutlooks(
          new CaseCache(null),
          (done, all) -> {
            throw new AssertionError("a shipped bench has no table: run ShippedCases");
          });

  /** One call for each kind of bench. */
  private static List<ServiceCall> calls() {
    Map<String, ServiceCall> calls = new LinkedHashMap<>();
    ShippedQuizzes.bank().calls().forEach(c -> calls.putIfAbsent(c.bench().name(), c));
    return List.copyOf(calls.values());
  }

  @Test
  void onlyTheLastFewAreKept() {
    List<ServiceCall> calls = calls();
    assertThat(calls).hasSizeGreaterThan(CachedOutlooks.KEPT);
    Outlook first = OUTLOOKS.of(calls.get(0));
    for (ServiceCall call : calls.subList(1, CachedOutlooks.KEPT)) {
      OUTLOOKS.of(call);
    }
    assertThat(OUTLOOKS.of(calls.get(0))).as("used again, so it stays").isSameAs(first);
    for (ServiceCall call : calls.subList(1, CachedOutlooks.KEPT + 1)) {
      OUTLOOKS.of(call);
    }
    assertThat(OUTLOOKS.of(calls.get(0))).as("forgotten, and made anew").isNotSameAs(first);
  }

  /** A table has a hundred thousand outcomes, and only few of them differ. */
  @Test
  void equalOutcomesAreOneObject() {
    Set<Outcome> different = new HashSet<>();
    Set<Outcome> objects = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Case one : OUTLOOKS.of(calls().get(0)).table().cases()) {
      different.addAll(one.outcomes());
      objects.addAll(one.outcomes());
    }
    assertThat(objects).hasSameSizeAs(different);
  }
}
