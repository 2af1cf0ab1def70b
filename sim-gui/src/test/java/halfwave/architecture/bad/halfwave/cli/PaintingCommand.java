package halfwave.architecture.bad.halfwave.cli;

import java.awt.Color;

/** A command that draws by itself; its package has no description either. */
final class PaintingCommand {
  private PaintingCommand() {}

  static Color colour() {
    return Color.BLUE;
  }
}
