package halfwave.gui.presentation.evidence;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityReader;
import java.util.OptionalDouble;

/** Numbers as a person types them into a field that names its unit. */
final class TypedNumber {

  private TypedNumber() {}

  /**
   * The number in SI, if it lies in a range.
   *
   * @param text with a dot or a comma; bare in the unit of the field, or with a unit of its own
   * @param unit of the field
   * @param least smallest, SI
   * @param most largest, SI
   */
  static OptionalDouble si(String text, DisplayUnit unit, double least, double most) {
    String plain = text.strip().replace(',', '.');
    boolean bare = plain.matches("[-+\u2212]?[0-9.]+");
    OptionalDouble si = QuantityReader.si(bare ? plain + unit.symbol() : plain, unit.dimension());
    return si.stream().filter(v -> v >= least && v <= most).findFirst();
  }
}
