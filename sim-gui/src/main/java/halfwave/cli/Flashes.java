package halfwave.cli;

import halfwave.board.StatusCode;

/** A code of the status light as signs: a dash for a long flash, a dot for a short one. */
final class Flashes {

  private Flashes() {}

  static String of(StatusCode code) {
    return "—".repeat(code.longFlashes()) + "•".repeat(code.shortFlashes());
  }
}
