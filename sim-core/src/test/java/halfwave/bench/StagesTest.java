package halfwave.bench;

import static halfwave.bench.Hookups.HEALTHY;
import static halfwave.bench.Hookups.OPEN;
import static halfwave.bench.Hookups.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;

import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.Point;
import halfwave.instrument.Voltmeter;
import org.junit.jupiter.api.Test;

/** What is computed anew after which change. */
class StagesTest {

  private final Stages stages = new Stages();

  private void counts(int fields, int rods, int paths) {
    assertThat(new int[] {stages.fieldCount(), stages.rodCount(), stages.pathCount()})
        .containsExactly(fields, rods, paths);
  }

  @Test
  void draggingTheRodKeepsTheField() {
    stages.circuit(STANDARD);
    counts(1, 1, 1);
    for (int k = 1; k <= 5; k++) {
      stages.circuit(Hookups.shifted(0, k * 1e-3, 0));
      counts(1, 1 + k, 1 + k);
    }
    stages.circuit(STANDARD.with(HEALTHY.withRodKelvin(900)));
    counts(1, 7, 7);
  }

  @Test
  void wiringAndFilmsKeepTheFlame() {
    stages.circuit(STANDARD);
    for (Condition c :
        new Condition[] {
          HEALTHY.withConnector(1e6),
          HEALTHY.withConnector(OPEN),
          HEALTHY.withLeakage(1e7),
          HEALTHY.withJumper(0),
          HEALTHY.withGroundExtra(OPEN),
          HEALTHY.withBurnerScale(1e6, 1e-9),
          HEALTHY.withRodCoat(Coat.even(1e-5, 1000))
        }) {
      stages.circuit(STANDARD.with(c));
    }
    Design d = STANDARD.design();
    stages.circuit(STANDARD.with(d.withSource(new Source(90, 50, 1e6, 4.7e-9, 1e7))));
    stages.circuit(STANDARD.with(d.withLead(new Lead(1e3, 1e8, 1e-10))));
    counts(1, 1, 1);
  }

  @Test
  void metersKeepTheFlame() {
    Voltmeter.HIGH_IMPEDANCE.read(stages.circuit(STANDARD), Point.TERMINAL, Point.COMMON);
    Voltmeter.HIGH_IMPEDANCE.read(stages.circuit(STANDARD), Point.ROD, Point.CHASSIS);
    Readings.of(stages, STANDARD);
    Readings.undisturbed(stages, STANDARD);
    counts(1, 1, 1);
  }

  @Test
  void gasMakesAllAnew() {
    stages.circuit(STANDARD);
    stages.circuit(STANDARD.with(HEALTHY.withManifold(0.9)));
    counts(2, 2, 2);
    stages.circuit(STANDARD.with(HEALTHY.withManifold(0.9).withAir(0.8)));
    counts(3, 3, 3);
  }

  @Test
  void attachmentKeepsTheRod() {
    stages.circuit(STANDARD);
    stages.circuit(STANDARD.with(HEALTHY.withAttachment(0.5)));
    counts(1, 1, 2);
  }
}
