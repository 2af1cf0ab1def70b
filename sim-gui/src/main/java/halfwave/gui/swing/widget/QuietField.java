package halfwave.gui.swing.widget;

import java.awt.Rectangle;
import javax.swing.JTextField;

/** A field that scrolls itself into sight only while someone types in it. */
public class QuietField extends JTextField {

  private static final long serialVersionUID = 1L;

  @Override
  public void scrollRectToVisible(Rectangle rectangle) {
    if (isFocusOwner()) {
      super.scrollRectToVisible(rectangle);
    }
  }
}
