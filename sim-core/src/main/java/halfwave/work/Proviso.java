package halfwave.work;

/** When a look or a reading shows what it can show, if not at any time. */
public enum Proviso {
  /** While there is flame. */
  WHILE_IT_BURNS,
  /** While the board tries to light. */
  IN_A_TRIAL,
  /** While the thermostat calls and the board has not given up. */
  DURING_A_CALL,
  /** Once the board has switched the circulating blower on. */
  ONCE_BLOWER_IS_ON,
  /** When the board comes to where it minds. */
  WHEN_BOARD_MEETS_IT,
  /** On boards that check it, and on no others. */
  IF_BOARD_CHECKS
}
