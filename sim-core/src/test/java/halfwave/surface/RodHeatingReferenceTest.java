package halfwave.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.api.Test;

/** Rod heating against the model's section 3 (memory values, integrated there numerically). */
@Validated(Area.FILMS)
class RodHeatingReferenceTest {

  private static final Reference QUOTED =
      Reference.memory("rod heating with textbook coefficients, model's section 3");

  private static void quoted(String at, double computed, double expected) {
    QUOTED
        .check("rod in the flame, from 300 K", Unit.KELVIN, computed)
        .at(at)
        .isCloseTo(expected, 2, "quoted by Euler's method at 0.25 s, up to 2 K above the exact");
  }

  @Test
  void warmsInTheFlame() {
    RodHeating rod = RodHeating.inFlame(3.2e-3);
    quoted("3 s", rod.kelvinAfter(300, 3), 425);
    quoted("10 s", rod.kelvinAfter(300, 10), 673);
    quoted("20 s", rod.kelvinAfter(300, 20), 919);
    quoted("30 s", rod.kelvinAfter(300, 30), 1050);
    quoted("the end", rod.settledKelvin(), 1146);
    assertThat(rod.kelvinAfter(300, 1e9)).isCloseTo(rod.settledKelvin(), within(1e-6));
  }

  @Test
  void coolsToTheWalls() {
    RodHeating rod = RodHeating.outOfFlame(300, 3.2e-3);
    assertThat(rod.settledKelvin()).isCloseTo(300, within(1e-9));
    double after = rod.kelvinAfter(1146, 30);
    assertThat(after).isBetween(300.0, 1146.0);
    assertThat(rod.kelvinAfter(1146, 0)).isEqualTo(1146);
  }

  @Test
  void splittingTheTimeChangesNothingThatMatters() {
    RodHeating rod = RodHeating.inFlame(3.2e-3);
    double whole = rod.kelvinAfter(300, 17);
    double parts = rod.kelvinAfter(rod.kelvinAfter(300, 4.3), 12.7);
    // truncation of the fourth-order steps, measured 1e-7
    assertThat(parts).isCloseTo(whole, within(1e-5));
  }
}
