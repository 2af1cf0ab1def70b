package halfwave.gui.swing;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test with a window that is opened before it and closed after it. */
abstract class WithWindow {

  /** Settings lie here, and what a test writes. */
  @TempDir Path folder;

  OpenWindow open;
  Hand hand;

  @BeforeEach
  final void openWindow() {
    open = OpenWindow.plain(folder);
    hand = new Hand(open);
  }

  @AfterEach
  final void closeWindow() throws Exception {
    if (open != null) {
      open.close();
    }
  }
}
