package halfwave.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.Readings;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.flame.FlameCalibration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The grid of sense currents against the full model, between its corners. */
class SenseCurrentsPropertyTest {

  private static final List<Condition> CONDITIONS =
      List.of(
          Condition.HEALTHY,
          Condition.HEALTHY.withConnector(5e6),
          Condition.HEALTHY.withLeakage(10e6),
          Condition.HEALTHY.withRodCoat(Coat.even(1e-6, 1000)),
          Condition.HEALTHY.withRodCoat(Coat.even(1e-5, 1)),
          Condition.HEALTHY.withAttachment(0.1),
          Condition.HEALTHY.withManifold(0.5));

  @Test
  void staysNearTheFullModel() {
    SenseCurrents currents = new SenseCurrents();
    Random random = new Random(5);
    for (Bench shipped : ShippedBenches.all()) {
      for (Condition condition : CONDITIONS) {
        Bench bench = shipped.with(condition);
        for (int k = 0; k < 12; k++) {
          double kelvin = 300 + 900 * random.nextDouble();
          double strength =
              k % 2 == 0 ? 0.8 + 0.4 * random.nextDouble() : 0.1 + 0.9 * random.nextDouble();
          FlameCalibration flame = bench.design().flame();
          Bench there =
              bench
                  .with(
                      bench
                          .design()
                          .withFlame(
                              flame.withIonMultiplier(flame.ionMultiplierRatio() * strength)))
                  .with(condition.withRodKelvin(kelvin));
          Solved full = (Solved) Readings.undisturbed(new Stages(), there);
          SenseCurrent near = currents.of(bench, null).at(kelvin, strength);
          System.out.printf(
              "DEV %.4f %.4f %s %s %s%n",
              (near.meanAmps() - full.currentMeanAmps(Part.CONNECTOR)) * 1e6,
              (near.alternatingRmsAmps() - full.currentAlternatingRmsAmps(Part.CONNECTOR)) * 1e6,
              shipped.name(),
              kelvin,
              strength);
          // 1 % of a healthy reading, 1.5 times the worst seen; largest where a flame still grows
          assertThat(near.meanAmps())
              .as("%s %s %s K, strength %s", shipped.name(), condition, kelvin, strength)
              .isCloseTo(full.currentMeanAmps(Part.CONNECTOR), within(0.03e-6));
          assertThat(near.alternatingRmsAmps())
              .isCloseTo(full.currentAlternatingRmsAmps(Part.CONNECTOR), within(0.03e-6));
        }
      }
    }
  }

  @Test
  void cornersAreComputedOnce() {
    SenseCurrents currents = new SenseCurrents();
    SenseCurrents.Flame flame = currents.of(ShippedBenches.standard(), null);
    flame.at(705, 0.95);
    int before = currents.solvedCount();
    flame.at(711, 0.97);
    currents.of(ShippedBenches.standard(), null).at(719, 0.93);
    assertThat(currents.solvedCount()).isEqualTo(before);
  }

  @Test
  void noFlameIsTheDarkCircuit() {
    SenseCurrents.Flame flame = new SenseCurrents().of(ShippedBenches.standard(), null);
    assertThat(flame.at(1000, 0)).isEqualTo(flame.dark());
    assertThat(flame.dark().meanAmps()).isCloseTo(0, within(1e-12));
  }
}
