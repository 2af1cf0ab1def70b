package halfwave.circuit;

import halfwave.quantity.Guard;
import java.util.ArrayList;
import java.util.List;

/**
 * A sense circuit: one sine source from {@link Point#COMMON} to {@link Point#EMF}, and elements.
 *
 * @param openCircuitRmsVolts the source's open-circuit voltage (V rms)
 * @param sourceHertz its frequency (Hz), 1 to 1000
 * @param elements everything else, in the order that names them
 */
public record Circuit(double openCircuitRmsVolts, double sourceHertz, List<Element> elements) {

  /** Checks the domain and takes a copy. */
  public Circuit {
    Guard.notNegative("openCircuitRmsVolts", openCircuitRmsVolts);
    Guard.inRange("sourceHertz", sourceHertz, 1, 1000);
    elements = List.copyOf(elements);
  }

  /** This circuit with further elements: a meter, a jumper, a probe. */
  public Circuit with(Element... more) {
    List<Element> all = new ArrayList<>(elements);
    all.addAll(List.of(more));
    return new Circuit(openCircuitRmsVolts, sourceHertz, all);
  }

  /** This circuit without the elements of that part. */
  public Circuit without(Part part) {
    return new Circuit(
        openCircuitRmsVolts, sourceHertz, elements.stream().filter(e -> e.part() != part).toList());
  }

  /** This circuit with its power off. */
  public Circuit unpowered() {
    return new Circuit(0, sourceHertz, elements);
  }

  /** Whether its source gives any voltage. */
  public boolean live() {
    return openCircuitRmsVolts > 0;
  }
}
