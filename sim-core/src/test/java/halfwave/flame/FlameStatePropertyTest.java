package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which looks the shipped burners can take, and in which direction they change. */
class FlameStatePropertyTest {

  private static FlameSheets flame(double inches, double air) {
    BurnerDesign burner = BurnerDesign.inshot(Fuel.NATURAL_GAS);
    double pascals = inches * Fuel.INCH_OF_WATER_PASCALS;
    return FlameSheets.of(
        Mixture.of(Fuel.NATURAL_GAS, burner, pascals, air), burner, FlameCalibration.DEFAULT);
  }

  @Test
  void shippedBurnersAreHealthy() {
    for (Fuel fuel : Fuel.values()) {
      assertThat(FlameSheets.healthy(fuel, BurnerDesign.inshot(fuel)).state())
          .isEqualTo(FlameState.HEALTHY);
      assertThat(FlameSheets.healthy(fuel, BurnerDesign.pilot(fuel)).state())
          .isEqualTo(FlameState.HEALTHY);
    }
  }

  @Test
  void everyStateCanBeReached() {
    assertThat(flame(0, 0.95).state()).isEqualTo(FlameState.OUT);
    assertThat(flame(3.5, 1.7).state()).isEqualTo(FlameState.BLOWN_OFF);
    assertThat(flame(0.3, 1.65).state()).isEqualTo(FlameState.FLASHBACK);
    assertThat(flame(3.5, 1.5).state()).isEqualTo(FlameState.LIFTED);
    assertThat(flame(0.2, 0.95).state()).isEqualTo(FlameState.LAZY);
    assertThat(flame(3.5, 1.3).state()).isEqualTo(FlameState.LEAN);
    assertThat(flame(3.5, 0.5).state()).isEqualTo(FlameState.RICH);
  }

  @Test
  void moreAirStandsOffFurther() {
    double last = 0;
    for (double air = 0.3; air < 1.45; air += 0.05) {
      double gap = flame(3.5, air).gapMeters();
      assertThat(gap).isGreaterThan(last);
      last = gap;
    }
  }

  @Test
  void aFlameThatDoesNotBurnMakesNoIons() {
    FlameSheets dead = flame(3.5, 1.7);
    IonField field = IonField.of(dead);
    assertThat(dead.mantleAmpsPerSquareMeter()).isZero();
    assertThat(field.sourcePerCubicMeterSecond(0.013, 0, 0.01)).isZero();
    assertThat(field.ionDensityPerCubicMeter(0.013, 0, 0.01)).isZero();
    assertThat(field.gasKelvin(0.013, 0, 0.01)).isEqualTo(300);
  }

  @Test
  void lazyFlameRises() {
    assertThat(flame(0.2, 0.95).axisRiseMeters(15e-3)).isGreaterThan(3e-3);
    assertThat(flame(3.5, 0.95).axisRiseMeters(15e-3)).isLessThan(0.3e-3);
  }
}
