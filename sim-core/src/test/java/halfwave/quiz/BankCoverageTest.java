package halfwave.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.diagnosis.Cause;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.io.evidence.PriorsFile;
import halfwave.io.quiz.ShippedQuizzes;
import halfwave.lesson.Words;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a teacher may expect of the shipped bank: enough of everything, and no answer in a text. */
class BankCoverageTest {

  private static final List<ServiceCall> CALLS = ShippedQuizzes.bank().calls();
  private static final Map<String, Complaint> COMPLAINTS = Complaint.all();

  private static Stream<Cause> causes(ServiceCall call) {
    return call.hidden().stream().map(Hidden::cause);
  }

  private static <K> Map<K, Long> count(Function<ServiceCall, K> of) {
    return CALLS.stream().collect(Collectors.groupingBy(of, Collectors.counting()));
  }

  private static Set<FaultGroup> groups(ServiceCall call) {
    Set<FaultGroup> groups = EnumSet.noneOf(FaultGroup.class);
    causes(call).flatMap(c -> c.kinds().stream()).map(FaultKind::group).forEach(groups::add);
    return groups;
  }

  @Test
  void everyLevelAndObjectiveHasEnoughCalls() {
    assertThat(CALLS).hasSizeGreaterThanOrEqualTo(34);
    assertThat(count(ServiceCall::level))
        .containsOnlyKeys(Level.values())
        .allSatisfy((level, calls) -> assertThat(calls).isGreaterThanOrEqualTo(9));
    assertThat(count(ServiceCall::objective))
        .containsOnlyKeys(Objective.values())
        .allSatisfy((objective, calls) -> assertThat(calls).isGreaterThanOrEqualTo(3));
  }

  @Test
  void everyPartOfTheFurnaceIsToBlameSomewhere() {
    Map<FaultGroup, Integer> calls = new EnumMap<>(FaultGroup.class);
    CALLS.forEach(call -> groups(call).forEach(g -> calls.merge(g, 1, Integer::sum)));
    assertThat(calls).containsOnlyKeys(FaultGroup.values());
  }

  @Test
  void everyShippedBenchIsMetAndTheStandardOneMostOften() {
    Map<Bench, Long> benches = count(ServiceCall::bench);
    assertThat(benches.keySet()).containsExactlyInAnyOrderElementsOf(ShippedBenches.all());
    assertThat(benches.get(ShippedBenches.standard())).isGreaterThan(CALLS.size() / 2);
  }

  /** Other pairs are in no table of cases. */
  @Test
  void twoFaultsTogetherAreKnownToTheEngine() {
    List<Cause> pairs = CALLS.stream().flatMap(c -> causes(c)).filter(c -> two(c)).toList();
    assertThat(pairs).hasSizeGreaterThanOrEqualTo(3);
    assertThat(PriorsFile.shipped().causes()).containsAll(pairs);
  }

  private static boolean two(Cause cause) {
    return cause.kinds().size() == 2;
  }

  @Test
  void nothingIsWrongSomewhereAndSomeCallsHaveAlternatives() {
    assertThat(CALLS.stream().filter(c -> causes(c).allMatch(Cause::healthy)))
        .hasSizeGreaterThanOrEqualTo(2);
    assertThat(CALLS.stream().filter(c -> c.hidden().size() > 1)).hasSizeGreaterThanOrEqualTo(5);
    assertThat(CALLS).allMatch(c -> c.hidden().size() <= 3);
    for (ServiceCall call : CALLS) {
      assertThat(causes(call)).doesNotHaveDuplicates();
    }
  }

  @Test
  void manyRodsAreBlamedAndInnocent() {
    List<ServiceCall> blamed =
        CALLS.stream().filter(c -> COMPLAINTS.get(c.name()).rodBlamed()).toList();
    assertThat(blamed).hasSizeGreaterThanOrEqualTo(10);
    for (ServiceCall call : blamed) {
      assertThat(groups(call)).as(call.name()).doesNotContain(FaultGroup.ROD);
      assertThat(call.complaint().in(Locale.ENGLISH)).contains("sensor");
      assertThat(call.complaint().in(new Locale("es"))).contains("sensor");
    }
  }

  @Test
  void everyComplaintIsReadAndStandsInBothLanguages() {
    assertThat(COMPLAINTS).containsOnlyKeys(CALLS.stream().map(ServiceCall::name).toList());
    Set<Words> seen = new HashSet<>();
    for (ServiceCall call : CALLS) {
      for (Words words : List.of(call.title(), call.complaint())) {
        assertThat(seen.add(words)).as(call.name()).isTrue();
        assertThat(words.texts()).containsOnlyKeys("en", "es");
        assertThat(words.texts().get("es")).isNotEqualTo(words.texts().get("en"));
      }
    }
  }
}
