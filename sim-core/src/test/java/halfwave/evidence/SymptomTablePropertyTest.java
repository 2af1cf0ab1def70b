package halfwave.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.MeterReading;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What all looks and readings together can tell apart. */
class SymptomTablePropertyTest {

  private static final Bench BENCH = ShippedBenches.standard();

  /**
   * Kinds that no look and no reading tells apart on this bench, each with its reason. Empty: there
   * are none.
   */
  private static final Set<Set<FaultKind>> ALIKE = Set.of();

  /** All that is seen, readings as coarse as a meter and an unsteady flame leave them. */
  private static List<Object> seen(Symptoms s) {
    return List.of(
        s.course(),
        s.code(),
        coarse(Optional.of(s.standby())),
        coarse(Optional.of(s.leadOff())),
        coarse(s.trial()),
        coarse(s.warm()),
        s.sights());
  }

  private static List<Long> coarse(Optional<MeterReading> reading) {
    MeterReading at = reading.orElse(null);
    if (at instanceof MeterReading.Volts v) {
      return List.of(Math.round(v.alternatingRmsVolts() / 2));
    }
    return at instanceof MeterReading.Amps a
        ? List.of(Math.round(a.meanAmps() / 0.2e-6), Math.round(a.alternatingRmsAmps() / 0.4e-6))
        : List.of();
  }

  private static List<Fault> severities(FaultKind kind) {
    return Stream.of(kind.least(), kind.typical(), kind.most())
        .distinct()
        .map(s -> Fault.of(kind, s))
        .toList();
  }

  /** A pilot proves within seconds of the call, before other boards have purged. */
  @Test
  void everyHealthyBenchRuns() {
    for (Bench bench : ShippedBenches.all()) {
      Symptoms symptoms = Symptoms.of(bench, ShippedBoards.standard(bench.design().ignition()), 1);
      assertThat(symptoms.course()).as(bench.name()).isEqualTo(Course.RUNS);
      assertThat(symptoms.sights().trial()).as(bench.name()).isNotEmpty();
    }
  }

  @Test
  void noTwoKindsLookTheSame() {
    Map<List<Object>, FaultKind> first = new LinkedHashMap<>();
    Map<FaultKind, Set<FaultKind>> alike = new EnumMap<>(FaultKind.class);
    for (FaultKind kind : FaultKind.values()) {
      for (Fault fault : severities(kind)) {
        Symptoms symptoms =
            Symptoms.of(fault.on(BENCH), ShippedBoards.standard(BENCH.design().ignition()), 1);
        FaultKind before = first.putIfAbsent(seen(symptoms), kind);
        if (before != null && before != kind) {
          alike.computeIfAbsent(before, k -> new HashSet<>()).add(kind);
        }
      }
    }
    Set<Set<FaultKind>> pairs = new HashSet<>();
    alike.forEach((a, all) -> all.forEach(b -> pairs.add(Set.of(a, b))));
    assertThat(pairs).isEqualTo(ALIKE);
  }
}
