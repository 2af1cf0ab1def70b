package halfwave.message;

import halfwave.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A number in SI with its dimension. A class and no record, because its unit follows from the
 * dimension and cannot stand in a component's name.
 */
public final class Quantity implements Argument {

  private final double si;
  private final Dimension dimension;

  /**
   * Makes a quantity.
   *
   * @param si the number in the SI unit of the dimension; not NaN; infinite only for a resistance
   * @param dimension its kind
   */
  public Quantity(double si, Dimension dimension) {
    boolean open = dimension == Dimension.RESISTANCE && si == Double.POSITIVE_INFINITY;
    if (!(open || Math.abs(si) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("si = " + si + ": finite, as " + dimension);
    }
    this.si = si;
    this.dimension = dimension;
  }

  /** The number in the SI unit of the dimension. */
  public double si() {
    return si;
  }

  /** Its kind. */
  public Dimension dimension() {
    return dimension;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Quantity q && Double.compare(si, q.si) == 0 && dimension == q.dimension;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(si) + dimension.hashCode();
  }

  @Override
  public String toString() {
    return si + " (SI, " + dimension + ")";
  }
}
