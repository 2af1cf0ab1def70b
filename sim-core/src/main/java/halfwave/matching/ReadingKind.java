package halfwave.matching;

import halfwave.instrument.Figure;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.Shown;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import halfwave.work.MeterTest;

/** A figure that a technician writes down. */
public enum ReadingKind {
  /** DC in series, plus from board to rod. */
  SERIES_DC(MeterTest.SERIES_CURRENT, MeterFunction.DC_MICROAMPS),
  /** AC beside it, the mean removed. */
  SERIES_AC(MeterTest.SERIES_CURRENT, MeterFunction.AC_MICROAMPS),
  /** AC volts at the sense terminal, flame burning. */
  TERMINAL_VOLTS(MeterTest.TERMINAL_VOLTS, MeterFunction.AC_VOLTS),
  /** AC volts there with the lead pulled off. */
  LEAD_OFF_VOLTS(MeterTest.TERMINAL_VOLTS_LEAD_OFF, MeterFunction.AC_VOLTS),
  /** AC volts there, lead on, no flame. */
  FLAME_OUT_VOLTS(MeterTest.TERMINAL_VOLTS_FLAME_OUT, MeterFunction.AC_VOLTS);

  /** More than any sense circuit gives, and all that a microamps input holds (A). */
  private static final double MOST_AMPS = 200e-6;

  /** Where the usual category of a meter ends (V). */
  private static final double MOST_VOLTS = 600;

  private final MeterTest test;
  private final MeterFunction function;

  ReadingKind(MeterTest test, MeterFunction function) {
    this.test = test;
    this.function = function;
  }

  /** The work that gives it. */
  public MeterTest test() {
    return test;
  }

  /** What the dial is set to for this figure alone. */
  public MeterFunction function() {
    return function;
  }

  /** What it measures. */
  public Dimension dimension() {
    return function.dimension();
  }

  /** Largest figure that can be, in SI. */
  public double mostSi() {
    return dimension() == Dimension.CURRENT ? MOST_AMPS : MOST_VOLTS;
  }

  /** Smallest figure that can be, in SI; only DC has a sign. */
  public double leastSi() {
    return this == SERIES_DC ? -MOST_AMPS : 0;
  }

  /** A figure that is usual, in SI: 3 µA or 80 V [practice]. */
  public double usualSi() {
    return dimension() == Dimension.CURRENT ? 3e-6 : 80;
  }

  /** Its figure on a display that shows the whole test; never over range. */
  double si(Shown shown) {
    if (shown instanceof Shown.Both both) {
      return si(this == SERIES_DC ? both.direct() : both.alternating());
    }
    return si(((Shown.Alternating) shown).figure());
  }

  private static double si(Figure figure) {
    Quantity quantity = ((Figure.Value) figure).quantity();
    return quantity.si();
  }
}
