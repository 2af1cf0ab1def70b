package halfwave.instrument;

import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import halfwave.quantity.Noise;
import halfwave.quantity.Noise.Purpose;
import java.util.List;

/** How true values become figures: settling, error, range, last digit. */
final class Digits {

  private final MeterModel model;
  private final Look look;

  Digits(MeterModel model, Look look) {
    this.model = model;
    this.look = look;
  }

  /** Which figure's chance. */
  private enum Chance {
    ALTERNATING,
    DIRECT,
    OHMS,
    JUMP
  }

  /** The display for a steady voltage or current between the leads, in SI. */
  Shown shown(MeterFunction function, double meanSi, double alternatingSi) {
    Figure direct =
        function.showsDirect() ? figure(function, settled(meanSi), Chance.DIRECT) : null;
    Figure alternating =
        function.showsAlternating()
            ? figure(function, settled(alternatingSi), Chance.ALTERNATING)
            : null;
    if (direct != null && alternating != null) {
      return new Shown.Both(alternating, direct);
    }
    if (alternating != null) {
      return new Shown.Alternating(alternating);
    }
    if (direct != null) {
      return new Shown.Direct(direct);
    }
    throw new IllegalStateException("no voltage or current: " + function);
  }

  /** The display of a current function behind a blown fuse: not even its last digit moves. */
  Shown noCurrent(MeterFunction function) {
    Quantity zero = new Quantity(0, function.dimension());
    Figure figure = new Figure.Value(zero, model.scales(function).get(0).resolution());
    if (function.showsAlternating()) {
      return function.showsDirect()
          ? new Shown.Both(figure, figure)
          : new Shown.Alternating(figure);
    }
    return new Shown.Direct(figure);
  }

  /** The display of an ohms function on a dead circuit; leads included, at once [practice]. */
  Shown.Ohms ohms(MeterFunction function, double ohms) {
    return ohms(function, figure(function, ohms + model.leadOhms(), Chance.OHMS), true);
  }

  /**
   * The display of an ohms function on a live circuit. The meter takes all voltage at its leads for
   * that of its own source; an alternating one it catches at one moment or another.
   *
   * @param testVolts what its own source leaves at the leads (V)
   * @param meanVolts DC of the circuit (V)
   * @param alternatingRmsVolts its AC (V rms)
   */
  Shown.Ohms liveOhms(
      MeterFunction function, double testVolts, double meanVolts, double alternatingRmsVolts) {
    double volts = testVolts + meanVolts + alternatingRmsVolts * chance(Chance.JUMP);
    double rest = model.ohmmeter().testVolts() - volts;
    double apparent =
        rest > 0 ? model.ohmmeter().sourceOhms() * volts / rest : Double.POSITIVE_INFINITY;
    return ohms(function, figure(function, apparent, Chance.OHMS), false);
  }

  private Shown.Ohms ohms(MeterFunction function, Figure figure, boolean steady) {
    boolean tone =
        function == MeterFunction.CONTINUITY
            && figure instanceof Figure.Value value
            && value.quantity().si() < model.ohmmeter().toneBelowOhms();
    return new Shown.Ohms(figure, steady, tone);
  }

  private double settled(double si) {
    return model.averagingSeconds() == 0
        ? si
        : si * -StrictMath.expm1(-look.elapsedSeconds() / model.averagingSeconds());
  }

  /** The first range that holds the value with its error. */
  private Figure figure(MeterFunction function, double si, Chance chance) {
    List<Scale> scales = model.scales(function);
    Dimension dimension = function.dimension();
    if (Math.abs(si) == Double.POSITIVE_INFINITY) {
      return new Figure.OverRange(dimension);
    }
    double error = Math.max(-1, Math.min(1, chance(chance) / Scale.DEVIATIONS_TO_LIMIT));
    for (Scale scale : scales) {
      double rounded = scale.roundedSi(si + error * scale.limitSi(si));
      double shown = chance == Chance.ALTERNATING ? Math.max(0, rounded) : rounded;
      if (Math.abs(shown) <= scale.largest().si()) {
        return new Figure.Value(new Quantity(shown, dimension), scale.resolution());
      }
    }
    return new Figure.OverRange(dimension);
  }

  private double chance(Chance chance) {
    long ofItsOwn = look.seed() + ((long) chance.ordinal() << 56);
    return Noise.gaussian(ofItsOwn, Purpose.READING, look.timeMillis() / model.refreshMillis());
  }
}
