package halfwave.sequence;

import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Intermittent;

/**
 * What someone, or the house, does to an appliance.
 *
 * <pre>
 * Deed = Call | Supply | Damp | Touch | Alter | Lurk | Become
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
   * The whole condition becomes another, as after a drag or a repair.
   *
   * @param condition the new one
   */
  record Become(Condition condition) implements Deed {}
}
