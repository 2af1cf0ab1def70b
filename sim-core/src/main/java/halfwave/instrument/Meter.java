package halfwave.instrument;

/**
 * One multimeter, as it lies in the tool bag.
 *
 * @param model what it is
 * @param fuseIntact whether the fuse of its current inputs conducts
 * @param alive whether it works at all
 */
public record Meter(MeterModel model, boolean fuseIntact, boolean alive) {

  /** A meter out of the box. */
  public static Meter fresh(MeterModel model) {
    return new Meter(model, true, true);
  }

  /** The same with its fuse blown. */
  public Meter withBlownFuse() {
    return new Meter(model, false, alive);
  }

  /** The same with a new fuse. */
  public Meter withNewFuse() {
    return new Meter(model, true, alive);
  }

  /** The same, broken for good. */
  public Meter destroyed() {
    return new Meter(model, fuseIntact, false);
  }
}
