package halfwave.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Trigger;
import halfwave.quantity.RejectedValueException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every kind of fault keeps. */
class FaultContractTest {

  private static final Set<Trigger> ALL = EnumSet.allOf(Trigger.class);

  private static List<Fault> severities(FaultKind kind) {
    return Stream.of(kind.least(), kind.typical(), kind.most())
        .distinct()
        .map(s -> Fault.of(kind, s))
        .toList();
  }

  @Test
  void thereAreManyOverAllGroups() {
    // at most as many as a long has bits: in one a belief remembers what a repair cures
    assertThat(FaultKind.values()).hasSizeBetween(30, Long.SIZE);
    assertThat(Stream.of(FaultKind.values()).map(FaultKind::group)).contains(FaultGroup.values());
    assertThat(Stream.of(FaultKind.values()).map(FaultKind::id)).doesNotHaveDuplicates();
    for (FaultKind kind : FaultKind.values()) {
      assertThat(FaultKind.named(kind.id())).contains(kind);
    }
    assertThat(FaultKind.named("none")).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void changesTheConditionAndNothingElse(FaultKind kind) {
    for (Bench bench : ShippedBenches.all()) {
      for (Fault fault : severities(kind)) {
        Bench faulty = fault.on(bench);
        assertThat(faulty.design()).isEqualTo(bench.design());
        assertThat(faulty.name()).isEqualTo(bench.name());
        assertThat(faulty.condition()).isNotEqualTo(bench.condition());
        assertThat(faulty.under(ALL).condition()).isNotEqualTo(bench.condition());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void hidesUntilItsTriggerComes(FaultKind kind) {
    Bench healthy = ShippedBenches.standard();
    for (Trigger trigger : Trigger.values()) {
      Bench faulty = Fault.typical(kind).during(trigger).on(healthy);
      assertThat(faulty.under(EnumSet.complementOf(EnumSet.of(trigger))).condition())
          .isEqualTo(healthy.condition());
      assertThat(faulty.under(EnumSet.of(trigger)).condition()).isNotEqualTo(healthy.condition());
    }
  }

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void anyTwoCommute(FaultKind kind) {
    // a bench has a kind once: more of it is more severe
    for (FaultKind other : EnumSet.complementOf(EnumSet.of(kind))) {
      for (Fault a : severities(kind)) {
        for (Fault b : severities(other)) {
          Bench one = b.on(a.on(ShippedBenches.standard()));
          Bench two = a.on(b.on(ShippedBenches.standard()));
          assertSame(one, two, a + " and " + b);
          assertSame(one.under(ALL), two.under(ALL), a + " and " + b + ", all triggers");
        }
      }
    }
  }

  private static void assertSame(Bench one, Bench two, String what) {
    assertThat(one.condition().appliance()).as(what).isEqualTo(two.condition().appliance());
    for (Parameter parameter : Parameter.values()) {
      double a = parameter.of(one);
      double b = parameter.of(two);
      // two roundings of a product or a sum of reciprocals; open is open
      assertThat(a == b || Math.abs(a - b) <= 4e-16 * Math.abs(b)).as(what).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1, 1e300})
  void refusesWhatIsNoSeverity(double severity) {
    assertThatExceptionOfType(RejectedValueException.class)
        .isThrownBy(() -> Fault.of(FaultKind.ROD_FOULED, severity))
        .satisfies(e -> assertThat(e.field()).isEqualTo("severity"));
  }

  @Test
  void addsToWhatIsThere() {
    Bench worn =
        ShippedBenches.standard().with(Condition.HEALTHY.withConnector(1e6).withLeakage(4e6));
    assertThat(Fault.of(FaultKind.CONNECTOR_CORRODED, 2e6).on(worn).condition().connectorOhms())
        .isEqualTo(3e6);
    // 4 beside 12 megohm
    assertThat(Fault.of(FaultKind.CERAMIC_CRACKED, 12e6).on(worn).condition().leakageOhms())
        .isCloseTo(3e6, within(1e-3));
  }
}
