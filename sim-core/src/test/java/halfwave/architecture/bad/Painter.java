package halfwave.architecture.bad;

import java.awt.Color;

/** Knows colours outside of halfwave.picture. */
final class Painter {
  private Painter() {}

  static int flame() {
    return new Color(0, 0, 255).getRGB();
  }
}
