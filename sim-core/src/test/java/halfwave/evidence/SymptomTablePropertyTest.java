package halfwave.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.MeterReading;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What all looks and readings together can tell apart. */
class SymptomTablePropertyTest {

  private static final boolean DEEP = Boolean.getBoolean("halfwave.deep");
  private static final Bench BENCH = ShippedBenches.standard();

  private static final String PILOT = "intermittent-pilot";

  /**
   * Kinds that no look and no reading tells apart, though they are there. On the bench with a
   * pilot: one burner hands no flame on; a flue that draws by itself has no inducer and no pressure
   * switch that could be missed; and (deep) half a microamp of deafness leaves the board a good
   * signal, which shows in nothing either. On the other benches there are none.
   */
  private static final Set<Set<FaultKind>> ALIKE_ON_PILOT =
      Set.of(
          Set.of(FaultKind.CROSSOVER_DIRTY, FaultKind.CROSSOVER_BLOCKED),
          DEEP
              ? Set.of(FaultKind.PRESSURE_SWITCH_OPEN, FaultKind.INDUCER_DEAD, FaultKind.BOARD_DEAF)
              : Set.of(FaultKind.PRESSURE_SWITCH_OPEN, FaultKind.INDUCER_DEAD));

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

  /** Three electrodes take five times as long as two: that bench is left to the deep run. */
  static Stream<Bench> shipped() {
    return ShippedBenches.all().stream().filter(b -> DEEP || b.design().spark() == null);
  }

  /**
   * On the standard bench at three severities, on the others at the usual one; deep: all at three.
   */
  @ParameterizedTest
  @MethodSource("shipped")
  void noTwoKindsLookTheSame(Bench bench) {
    boolean three = DEEP || bench.equals(BENCH);
    BoardSettings board = ShippedBoards.standard(bench.design().ignition());
    List<Fault> faults =
        Stream.of(FaultKind.values())
            .flatMap(kind -> three ? severities(kind).stream() : Stream.of(Fault.typical(kind)))
            .toList();
    // each call is played by itself, so the order does not matter
    Map<List<Object>, Set<FaultKind>> kinds =
        faults.parallelStream()
            .collect(
                Collectors.groupingByConcurrent(
                    fault -> seen(Symptoms.of(fault.on(bench), board, 1)),
                    Collectors.mapping(Fault::kind, Collectors.toSet())));
    Set<Set<FaultKind>> alike =
        kinds.values().stream().filter(set -> set.size() > 1).collect(Collectors.toSet());

    assertThat(alike).isEqualTo(bench.name().equals(PILOT) ? ALIKE_ON_PILOT : Set.of());
  }
}
