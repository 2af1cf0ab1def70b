package halfwave.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Circuit;
import halfwave.circuit.ConductionLaw;
import halfwave.circuit.ConductionLawContractTest;
import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A deposit that conducts one way is a law like any other. */
class RectifyingDepositContractTest extends ConductionLawContractTest {

  @Override
  protected List<ConductionLaw> laws() {
    return List.of(
        new RectifyingDeposit(1e3), new RectifyingDeposit(13.5e6), new RectifyingDeposit(1e9));
  }

  /** Source: mean of a half sine over a whole period, 0.4502·Vrms/R, closed form: 4.0 µA. */
  @Test
  void givesTheDcOfAHalfWave() {
    Circuit circuit =
        new LumpedCircuit(
                new Source(120, 60, 0, null, null),
                new Lead(0, null, null),
                null,
                new RectifyingDeposit(13.5e6),
                null,
                new Ground(0))
            .circuit();
    Solved solved = (Solved) SteadyState.of(circuit);
    // the backward leak takes a thousandth off; the half wave's kink costs sampling another
    assertThat(solved.currentMeanAmps(Part.FLAME)).isCloseTo(4.0e-6, within(0.02e-6));
  }
}
