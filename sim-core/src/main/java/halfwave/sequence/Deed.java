package halfwave.sequence;

import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Intermittent;
import halfwave.instrument.HookUp;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.work.Handling;
import halfwave.work.Repair;

/**
 * What someone, or the house, does to an appliance.
 *
 * <pre>
 * Deed = Call | Supply | Damp | Touch | Alter | Lurk | Become | PutRight | Mishandle
 *      | HookOn | TakeOff
 * </pre>
 */
public sealed interface Deed {

  /**
   * The thermostat begins or ends a call for heat.
   *
   * @param on whether it calls
   */
  record Call(boolean on) implements Deed {}

  /**
   * Someone throws the furnace switch.
   *
   * @param on whether there is power
   */
  record Supply(boolean on) implements Deed {}

  /**
   * The air turns damp, or dry.
   *
   * @param on whether it is damp
   */
  record Damp(boolean on) implements Deed {}

  /** Someone tugs at lead and connector: what vibration brings out shows for a while. */
  record Touch() implements Deed {}

  /**
   * One thing of the bench changes: a wire is pulled, the gas shut, a part wears.
   *
   * @param change what
   */
  record Alter(Change change) implements Deed {}

  /**
   * A fault that comes and goes is there from now on.
   *
   * @param intermittent which
   */
  record Lurk(Intermittent intermittent) implements Deed {}

  /**
   * The whole condition becomes another, as after a drag.
   *
   * @param condition the new one
   */
  record Become(Condition condition) implements Deed {}

  /**
   * Someone has done a repair. Its effect is there at once: the minutes are the person's, and are
   * not played.
   *
   * @param repair which
   */
  record PutRight(Repair repair) implements Deed {}

  /**
   * Something has gone wrong in someone's hands, for certain; who draws the chance is who plays.
   *
   * @param handling what
   */
  record Mishandle(Handling handling) implements Deed {}

  /**
   * Someone puts a meter on. To stand in series it needs the lead open for a while.
   *
   * @param meter which
   * @param function what its dial is set to
   * @param hookUp where its leads go
   */
  record HookOn(Meter meter, MeterFunction function, HookUp hookUp) implements Deed {}

  /** Someone takes the meter off, and puts the lead back where it was. */
  record TakeOff() implements Deed {}
}
