package halfwave.bench;

import halfwave.flame.Rod;
import halfwave.quantity.Guard;

/**
 * A spark electrode of its own, standing in the flame beside the rod: a third electrode, on its way
 * to the chassis through the winding of the spark transformer.
 *
 * @param electrode where it stands
 * @param windingOhms resistance to the chassis (Ω); infinity where the electrode floats
 */
public record SparkElectrode(Rod electrode, double windingOhms) {

  /** Checks the domain. */
  public SparkElectrode {
    Guard.resistance("windingOhms", windingOhms);
  }
}
