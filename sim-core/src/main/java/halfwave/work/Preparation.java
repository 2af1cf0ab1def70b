package halfwave.work;

/** The state that work needs the furnace in, and how one gets there, in a sentence. */
public enum Preparation {
  /** Any state. */
  NONE,
  /** All off, opened. */
  OFF,
  /** Power on, nothing opened. */
  POWER,
  /** Opened while off, then power on. */
  POWER_OPENED,
  /** The same behind the door that cuts the power. */
  POWER_DOOR,
  /** A call for heat, nothing opened. */
  CALL,
  /** Opened while off, then a call without gas. */
  CALL_OPENED,
  /** Burning, nothing opened that is dangerous. */
  FLAME,
  /** Opened while off, then burning. */
  FLAME_OPENED,
  /** The same behind the door that cuts the power. */
  FLAME_DOOR;

  static Preparation of(Work work) {
    Access access = work.part().access();
    boolean opened = access.powerOff() || access.gasOff();
    boolean door = access.covers().contains(Cover.BLOWER_DOOR);
    if (work.needsFlame()) {
      return !opened ? FLAME : door ? FLAME_DOOR : FLAME_OPENED;
    } else if (work.needsCall()) {
      return opened ? CALL_OPENED : CALL;
    } else if (work.needsPower()) {
      return !opened ? POWER : door ? POWER_DOOR : POWER_OPENED;
    }
    return work.powerOff() || work.gasOff() ? OFF : NONE;
  }
}
