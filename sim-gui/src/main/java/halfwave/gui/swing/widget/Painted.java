package halfwave.gui.swing.widget;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** Something painted by hand, with a name for who hears the screen. */
public abstract class Painted extends JComponent {

  private static final long serialVersionUID = 1L;

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Spoken();
    }
    return accessibleContext;
  }

  /** A picture. */
  private final class Spoken extends AccessibleJComponent {

    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.CANVAS;
    }
  }
}
