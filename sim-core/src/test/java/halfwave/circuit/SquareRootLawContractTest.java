package halfwave.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import halfwave.quantity.RejectedValueException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The contract, and what is the square-root law's own. */
class SquareRootLawContractTest extends ConductionLawContractTest {

  @Override
  protected List<ConductionLaw> laws() {
    return List.of(
        new SquareRootLaw(1.4e-7, 2.8e-7, 1.3e5),
        new SquareRootLaw(2e-7, 2e-7, 5e4),
        new SquareRootLaw(1e-6, 1e-8, 0),
        new SquareRootLaw(1e-9, 1e-5, 1e7));
  }

  /** Source: the definition, |v| = |I|·R + (I/k)², model.md section 2. */
  @Test
  void inverseOfItsDefinition() {
    for (ConductionLaw any : laws()) {
      SquareRootLaw law = (SquareRootLaw) any;
      for (double volts : new double[] {-300, -1, -1e-3, 1e-3, 1, 300}) {
        double k = volts > 0 ? law.burnerIonAmpsPerRootVolt() : law.rodIonAmpsPerRootVolt();
        double amps = Math.abs(law.currentAmps(volts));
        double back = amps * law.columnOhms() + (amps / k) * (amps / k);
        assertThat(back).isCloseTo(Math.abs(volts), within(1e-13 * Math.abs(volts)));
      }
    }
  }

  @Test
  void refusesWhatIsNoCoefficient() {
    for (double bad : new double[] {0, -1e-7, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new SquareRootLaw(bad, 1e-7, 1e4))
          .isInstanceOf(RejectedValueException.class)
          .hasMessageContaining("rodIonAmpsPerRootVolt");
      assertThatThrownBy(() -> new SquareRootLaw(1e-7, bad, 1e4))
          .isInstanceOf(RejectedValueException.class)
          .hasMessageContaining("burnerIonAmpsPerRootVolt");
    }
    for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new SquareRootLaw(1e-7, 1e-7, bad))
          .isInstanceOf(RejectedValueException.class)
          .hasMessageContaining("columnOhms");
    }
  }
}
