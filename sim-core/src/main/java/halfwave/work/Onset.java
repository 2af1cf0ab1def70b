package halfwave.work;

/** How something comes about. */
enum Onset {
  /** Over weeks. */
  GRADUAL,
  /** From one call to the next. */
  SUDDEN,
  /** By someone's hand. */
  SINCE_WORK
}
