package halfwave.work;

/** What a look or a test needs to be on. */
enum Needs {
  /** Nothing: power and gas are off where the way to the part asks for it. */
  NOTHING,
  /** Power. */
  POWER,
  /** Power and a call for heat. */
  CALL,
  /** Power and gas. */
  FLAME
}
