package halfwave.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Rod heating against the model's section 3 (memory values, integrated there numerically). */
class RodHeatingReferenceTest {

  @Test
  void warmsInTheFlame() {
    RodHeating rod = RodHeating.inFlame(3.2e-3);
    // from 300 K: 425 after 3 s, 673 after 10, 919 after 20, 1050 after 30, 1146 at the end;
    // the quoted values are those of Euler's method at 0.25 s, up to 2 K above the exact solution
    assertThat(rod.kelvinAfter(300, 3)).isCloseTo(425, within(2.0));
    assertThat(rod.kelvinAfter(300, 10)).isCloseTo(673, within(2.0));
    assertThat(rod.kelvinAfter(300, 20)).isCloseTo(919, within(2.0));
    assertThat(rod.kelvinAfter(300, 30)).isCloseTo(1050, within(2.0));
    assertThat(rod.settledKelvin()).isCloseTo(1146, within(2.0));
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
