package halfwave.lesson;

import halfwave.instrument.Figure;
import halfwave.instrument.HookUp;
import halfwave.instrument.Look;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.Shown;
import halfwave.quantity.Dimension;
import halfwave.sequence.MeterDisplay;
import halfwave.sequence.Moment;
import halfwave.sequence.Subjects;
import java.util.OptionalDouble;

/**
 * A number that can be read off a moment, SI.
 *
 * <pre>
 * Reading = Display | Metered | Signal | Burners
 * </pre>
 */
public sealed interface Reading {

  /** What kind of number it is. */
  Dimension dimension();

  /**
   * The number, SI; infinite where the display says that it is out of range; nothing where there is
   * nothing to read.
   */
  OptionalDouble at(Moment moment);

  /**
   * What the meter shows that stands on the appliance; its DC where it shows both.
   *
   * @param dimension of what; a meter that is set to anything else shows nothing of it
   */
  record Display(Dimension dimension) implements Reading {
    @Override
    public OptionalDouble at(Moment moment) {
      return MeterDisplay.at(moment)
          .map(measured -> figure(measured, dimension))
          .orElse(OptionalDouble.empty());
    }
  }

  /**
   * What a good service meter would show there once it has settled. It is only thought of: the
   * board notices nothing, and no lead is opened.
   *
   * @param function what its dial is set to; one that shows a single figure
   * @param hookUp where its leads are
   */
  record Metered(MeterFunction function, HookUp hookUp) implements Reading {

    /** Checks that there is one figure. */
    public Metered {
      if (function == MeterFunction.AC_AND_DC_MICROAMPS) {
        throw new IllegalArgumentException("function = " + function + ": one with a single figure");
      }
    }

    @Override
    public Dimension dimension() {
      return function.dimension();
    }

    @Override
    public OptionalDouble at(Moment moment) {
      Measurement measured =
          Measuring.of(
              Meter.fresh(ShippedMeters.service()),
              function,
              hookUp,
              Subjects.at(moment),
              Look.settled(moment.seed()));
      return figure(measured, function.dimension());
    }
  }

  /** The DC that the board takes for its flame signal, behind its filter. */
  record Signal() implements Reading {
    @Override
    public Dimension dimension() {
      return Dimension.CURRENT;
    }

    @Override
    public OptionalDouble at(Moment moment) {
      return OptionalDouble.of(moment.filter().meanAmps());
    }
  }

  /** How many burners burn. */
  record Burners() implements Reading {
    @Override
    public Dimension dimension() {
      return Dimension.NUMBER;
    }

    @Override
    public OptionalDouble at(Moment moment) {
      return OptionalDouble.of(moment.furnace().litCount());
    }
  }

  private static OptionalDouble figure(Measurement measured, Dimension dimension) {
    Shown shown = measured.shown();
    if (shown instanceof Shown.Direct direct) {
      return number(direct.figure(), dimension);
    } else if (shown instanceof Shown.Alternating alternating) {
      return number(alternating.figure(), dimension);
    } else if (shown instanceof Shown.Both both) {
      return number(both.direct(), dimension);
    } else if (shown instanceof Shown.Ohms ohms && ohms.steady()) {
      return number(ohms.figure(), dimension);
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble number(Figure figure, Dimension dimension) {
    if (figure instanceof Figure.Value value) {
      return value.quantity().dimension() == dimension
          ? OptionalDouble.of(value.quantity().si())
          : OptionalDouble.empty();
    }
    return ((Figure.OverRange) figure).dimension() == dimension
        ? OptionalDouble.of(Double.POSITIVE_INFINITY)
        : OptionalDouble.empty();
  }
}
