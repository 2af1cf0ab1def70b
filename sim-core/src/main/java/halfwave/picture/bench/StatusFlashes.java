package halfwave.picture.bench;

import halfwave.board.StatusCode;

/** Whether a status light is lit at an instant: long flashes, short ones, a pause, and again. */
final class StatusFlashes {

  /** Lengths of the flashes and of the dark between them and after them (ms) [practice]. */
  private static final long LONG_MILLIS = 1000;

  private static final long SHORT_MILLIS = 250;
  private static final long DARK_MILLIS = 350;
  private static final long PAUSE_MILLIS = 1800;

  private StatusFlashes() {}

  static boolean lit(StatusCode code, long timeMillis) {
    long round =
        code.longFlashes() * (LONG_MILLIS + DARK_MILLIS)
            + code.shortFlashes() * (SHORT_MILLIS + DARK_MILLIS)
            + PAUSE_MILLIS;
    long at = Math.floorMod(timeMillis, round);
    for (int k = 0; k < code.longFlashes() + code.shortFlashes(); k++) {
      long flash = k < code.longFlashes() ? LONG_MILLIS : SHORT_MILLIS;
      if (at < flash) {
        return true;
      }
      at -= flash + DARK_MILLIS;
      if (at < 0) {
        return false;
      }
    }
    return false;
  }
}
