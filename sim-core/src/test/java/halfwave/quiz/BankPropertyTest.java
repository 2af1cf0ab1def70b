package halfwave.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Ignition;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Occasion;
import halfwave.diagnosis.Outcome;
import halfwave.fault.FaultKind;
import halfwave.io.evidence.CachedOutlooks;
import halfwave.io.evidence.CaseCache;
import halfwave.io.quiz.ShippedQuizzes;
import halfwave.work.Look;
import halfwave.work.Repair;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the model proves of the shipped service calls: they can be solved by what is allowed, the
 * furnace does what the customer tells, the key cures it, and nothing else looks more like it. One
 * furnace for each thing that may be wrong; with {@code halfwave.deep} all that learners can meet.
 */
class BankPropertyTest {

  private static final boolean DEEP = Boolean.getBoolean("halfwave.deep");
  private static final Quiz BANK = ShippedQuizzes.bank();
  private static final Map<String, Complaint> COMPLAINTS = Complaint.all();

  /** A budget without an end, for whoever looks at everything. */
  private static final int ENDLESS = 1_000_000;

  private static final CachedOutlooks OUTLOOKS =
      new CachedOutlooks(new CaseCache(Path.of("target", "cases")), (done, all) -> true);

  /** The heating calls that were played serve all tests. */
  private static final Appearances APPEARANCES = new Appearances();

  static Stream<Named<Variant>> furnaces() {
    return BANK.calls().stream().flatMap(BankPropertyTest::furnaces);
  }

  private static Stream<Named<Variant>> furnaces(ServiceCall call) {
    return IntStream.range(0, DEEP ? Variant.COUNT : call.hidden().size())
        .mapToObj(k -> Variant.numbered(call, BANK.seed(), k))
        .map(v -> Named.of(call.name() + " " + v.number() + " " + v.cause().id(), v));
  }

  private static Technician technician(Variant variant) {
    return new Technician(variant, OUTLOOKS.of(variant.call()), APPEARANCES);
  }

  /** The same furnace without a budget. */
  private static Variant unhurried(Variant v) {
    ServiceCall c = v.call();
    ServiceCall call =
        new ServiceCall(
            c.name(),
            c.title(),
            c.complaint(),
            c.bench(),
            c.board(),
            c.hidden(),
            c.closed(),
            ENDLESS,
            ENDLESS,
            c.objective(),
            c.level(),
            c.since());
    return new Variant(call, v.number(), v.seed(), v.cause(), v.asFound());
  }

  @ParameterizedTest
  @MethodSource("furnaces")
  void adviceWithTheAllowedTestsIsEnoughAndStaysWithinTheBudget(Variant variant) {
    Visit visit = technician(variant).followAdvice();

    assertThat(visit.ending()).isEmpty();
    assertThat(visit.whole()).as("left: %s", visit.left().id()).isTrue();
    assertThat(visit.partsUnits()).isLessThanOrEqualTo(variant.call().partsUnits());
    assertThat(visit.log()).extracting(Done::danger).containsOnlyNulls();
  }

  @ParameterizedTest
  @MethodSource("furnaces")
  void theFurnaceDoesWhatTheCustomerTells(Variant variant) {
    Complaint complaint = COMPLAINTS.get(variant.call().name());
    Map<Check, Enum<?>> told = new LinkedHashMap<>();
    told.put(new Check.Call(), complaint.course());
    complaint.light().ifPresent(code -> told.put(new Check.Light(), code));
    complaint
        .flame()
        .ifPresent(f -> told.put(new Check.Looked(Look.FLAME_PICTURE, Occasion.TRIAL), f));

    Technician technician = technician(unhurried(variant));
    for (Map.Entry<Check, Enum<?>> one : told.entrySet()) {
      assertThat(technician.check(one.getKey()))
          .as(one.getKey().id())
          .isEqualTo(new Outcome.Found(one.getValue()));
    }
  }

  /** All that learners can meet: nothing has to be played for it. */
  @ParameterizedTest
  @MethodSource("calls")
  void theCustomerNeverContradictsTheComplaint(ServiceCall call) {
    Check check = new Check.Looked(Look.ASK_SINCE_WHEN, Occasion.STANDBY);
    Complaint complaint = COMPLAINTS.get(call.name());
    // where it may not be asked there is nothing to contradict
    assertThat(call.open(check) || complaint.since().isEmpty()).isTrue();
    for (int number = 0; number < Variant.COUNT && call.open(check); number++) {
      Variant variant = Variant.numbered(call, BANK.seed(), number);
      Visit asked = Visit.begin(variant, APPEARANCES, false).after(new Move.Checked(check));
      Outcome answer = asked.last().outcome();
      assertThat(answer)
          .as("%s %s", number, variant.cause().id())
          .isEqualTo(complaint.since().<Outcome>map(Outcome.Found::new).orElse(answer));
    }
  }

  static Stream<Named<ServiceCall>> calls() {
    return BANK.calls().stream().map(c -> Named.of(c.name(), c));
  }

  /** With {@code halfwave.deep} whichever of the repairs that cure it is chosen. */
  @ParameterizedTest
  @MethodSource("furnaces")
  void theKeyCuresIt(Variant variant) {
    Technician came = technician(unhurried(variant));
    assertThat(came.visit().whole()).isEqualTo(variant.cause().healthy());

    for (List<Repair> repairs : cures(variant.cause(), variant.call().ignition())) {
      Technician technician = technician(unhurried(variant));
      repairs.forEach(technician::mend);
      assertThat(technician.visit().whole()).as("%s", repairs).isTrue();
      assertThat(repairs.stream().mapToInt(Repair::costUnits).sum())
          .isLessThanOrEqualTo(variant.call().partsUnits());
    }
  }

  /** One cure, or each cure of each fault at least once, with one of every other fault. */
  private static List<List<Repair>> cures(Cause cause, Ignition ignition) {
    List<List<Repair>> ofEach = new ArrayList<>();
    for (FaultKind kind : cause.kinds()) {
      ofEach.add(Repair.curing(kind).stream().filter(r -> r.possibleAt(ignition)).toList());
    }
    int most = ofEach.stream().mapToInt(List::size).max().orElse(0);
    return IntStream.range(0, DEEP ? most : Math.min(1, most))
        .mapToObj(k -> ofEach.stream().map(cures -> cures.get(k % cures.size())).toList())
        .toList();
  }

  /** After all that is allowed, only what the same repair cures may look as likely as the key. */
  @ParameterizedTest
  @MethodSource("furnaces")
  void nothingElseLooksMoreLikeIt(Variant variant) {
    Map<Cause, Double> now = technician(unhurried(variant)).checkAll().now();
    double key = now.getOrDefault(variant.cause(), 0.0);

    assertThat(now.keySet().stream().filter(c -> now.get(c) >= key))
        .as("key %s: %s", key, variant.cause().id())
        .allMatch(c -> c.equals(variant.cause()) || curedTogether(c, variant));
  }

  private static boolean curedTogether(Cause other, Variant variant) {
    return Stream.of(Repair.values())
        .filter(r -> r.possibleAt(variant.call().ignition()))
        .anyMatch(r -> variant.cause().after(r).healthy() && other.after(r).healthy());
  }
}
