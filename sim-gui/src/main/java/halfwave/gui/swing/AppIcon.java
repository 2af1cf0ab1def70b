package halfwave.gui.swing;

import java.awt.Image;
import java.awt.Toolkit;
import java.net.URL;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** The picture by which a desktop knows the program: one and a half periods of flame current. */
final class AppIcon {

  private static final int[] SIZES = {16, 32, 48, 128, 256};

  private AppIcon() {}

  /** In all sizes that desktops ask for. */
  static List<Image> images() {
    return IntStream.of(SIZES).mapToObj(AppIcon::image).toList();
  }

  private static Image image(int size) {
    URL place = Objects.requireNonNull(AppIcon.class.getResource("icon-" + size + ".png"));
    return Toolkit.getDefaultToolkit().getImage(place);
  }
}
