package halfwave.quiz;

/** Why something cannot be done on a service call. */
public enum Refusal {
  /** The call is over. */
  OVER,
  /** It may not be used on this call. */
  CLOSED,
  /** It needs power, and the switch is off. */
  NO_POWER,
  /** It needs flame, and the gas is shut. */
  NO_GAS,
  /** A test signal stands where the rod's lead belongs. */
  SIGNAL_THERE,
  /** The appliance has no such part. */
  NO_SUCH_PART,
  /** It is so already. */
  ALREADY,
  /** Hints are not given here. */
  NO_HINTS
}
