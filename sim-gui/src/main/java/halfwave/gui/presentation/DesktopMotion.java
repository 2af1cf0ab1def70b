package halfwave.gui.presentation;

import org.jspecify.annotations.Nullable;

/**
 * Whether a desktop has its programs keep still.
 *
 * <p>Known limit: only desktops with XSETTINGS tell Java; on others the flame moves until somebody
 * chooses otherwise.
 */
public final class DesktopMotion {

  /** What the toolkit calls the property: the name in XSETTINGS after a word of its own. */
  public static final String PROPERTY = "gnome.Gtk/EnableAnimations";

  private DesktopMotion() {}

  /**
   * Whether programs move.
   *
   * @param told the value of the property, or null where the desktop tells nothing
   */
  public static boolean moves(@Nullable Object told) {
    return !(Integer.valueOf(0).equals(told) || Boolean.FALSE.equals(told));
  }
}
