package halfwave.gui.swing.editor;

import java.awt.Component;
import javax.swing.SwingUtilities;

/** What a test of the whole window has to know about the editor. */
public final class EditorParts {

  private EditorParts() {}

  /** Whether it lies in the form of a draft, which is scrolled. */
  public static boolean inForm(Component component) {
    return SwingUtilities.getAncestorOfClass(DraftForm.class, component) != null;
  }

  /** Whether it is the editor's window, which stays when what is in it is made anew. */
  public static boolean dialog(Component component) {
    return component instanceof EditorDialog;
  }
}
