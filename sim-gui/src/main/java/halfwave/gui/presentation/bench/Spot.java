package halfwave.gui.presentation.bench;

import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.SupplyPoint;
import java.util.Locale;

/** The usual places for the two leads of a meter, each with the function that is usual there. */
public enum Spot {
  /** Microammeter in the opened lead, at the board. */
  SERIES_AT_BOARD(MeterFunction.DC_MICROAMPS, new Placing.At(new InSenseLead(LeadEnd.BOARD, true))),
  /** Microammeter in the opened lead, at the rod. */
  SERIES_AT_ROD(MeterFunction.DC_MICROAMPS, new Placing.At(new InSenseLead(LeadEnd.ROD, true))),
  /** Volts at the sense terminal. */
  TERMINAL_TO_COMMON(
      MeterFunction.AC_VOLTS, new Placing.At(new Across(Point.TERMINAL, Point.COMMON))),
  /** Volts from rod to burner. */
  ROD_TO_BURNER(MeterFunction.DC_VOLTS, new Placing.At(new Across(Point.ROD, Point.CHASSIS))),
  /** A bare wire in the flame against the rod. */
  FLAME_TO_ROD(MeterFunction.DC_VOLTS, new Placing.InFlame(Point.ROD)),
  /** The way back: burner to the board's common. */
  BURNER_TO_COMMON(MeterFunction.OHMS, new Placing.At(new Across(Point.CHASSIS, Point.COMMON))),
  /** From tip to terminal of the rod, through its film. */
  ROD_SURFACE_TO_ROD(MeterFunction.OHMS, new Placing.At(new Across(Point.ROD_SURFACE, Point.ROD))),
  /** Along the sense lead. */
  LEAD_END_TO_END(MeterFunction.OHMS, new Placing.At(new Across(Point.LEAD, Point.ROD))),
  /** Line to neutral. */
  LINE_TO_NEUTRAL(
      MeterFunction.AC_VOLTS,
      new Placing.At(new AcrossSupply(SupplyPoint.LINE, SupplyPoint.NEUTRAL))),
  /** Line to ground. */
  LINE_TO_GROUND(
      MeterFunction.AC_VOLTS,
      new Placing.At(new AcrossSupply(SupplyPoint.LINE, SupplyPoint.GROUND))),
  /** Neutral to ground. */
  NEUTRAL_TO_GROUND(
      MeterFunction.AC_VOLTS,
      new Placing.At(new AcrossSupply(SupplyPoint.NEUTRAL, SupplyPoint.GROUND)));

  private final MeterFunction function;
  private final Placing placing;

  Spot(MeterFunction function, Placing placing) {
    this.function = function;
    this.placing = placing;
  }

  /** What the dial is set to there if nobody has turned it yet. */
  public MeterFunction function() {
    return function;
  }

  /** Where the leads go. */
  public Placing placing() {
    return placing;
  }

  /** Whether the leads of a meter are there, whichever is the red one. */
  public boolean holds(HookUp hookUp) {
    if (placing instanceof Placing.InFlame wire) {
      return hookUp instanceof WireInFlame there && there.other() == wire.other();
    }
    HookUp own = ((Placing.At) placing).hookUp();
    return own.equals(hookUp) || own.equals(hookUp.swapped());
  }

  /** Its name in the bundle. */
  public String key() {
    return "spot." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
