package halfwave.gui.swing.widget;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import halfwave.picture.Palette;
import java.awt.Color;
import java.awt.Font;
import java.util.HashMap;
import java.util.Map;
import javax.swing.UIManager;

/** Colours and type of the window: the palette handed to the look and feel, and sizes of type. */
public final class Theme {

  /** Size of body type at 100 % (px). */
  static final float BODY = 13;

  private Palette palette;
  private final double ratio;

  private Theme(Palette palette, double ratio) {
    this.palette = palette;
    this.ratio = ratio;
  }

  /**
   * Takes a palette into use.
   *
   * @param palette the colours
   * @param ratio size of type over the usual (1)
   */
  public static Theme install(Palette palette, double ratio) {
    letters();
    FlatLaf.setGlobalExtraDefaults(defaults(palette, ratio));
    if (palette.dark()) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    UIManager.put(
        "defaultFont",
        new Font(FlatInterFont.FAMILY, Font.PLAIN, Math.round(BODY * (float) ratio)));
    return new Theme(palette, ratio);
  }

  private static void letters() {
    FlatInterFont.installLazy();
    FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
  }

  /** Reads letters and look once, which takes a while the first time. Only on the event thread. */
  public static void load() {
    letters();
    new FlatLightLaf().getDefaults();
  }

  private static Map<String, String> defaults(Palette p, double ratio) {
    Map<String, String> d = new HashMap<>();
    d.put("@background", hex(p.ground()));
    d.put("@foreground", hex(p.ink()));
    d.put("@accentColor", hex(p.accent()));
    d.put("@componentBackground", hex(p.sheet()));
    d.put("@disabledForeground", hex(p.softInk()));
    d.put("Component.borderColor", hex(p.border()));
    d.put("Component.disabledBorderColor", hex(p.hairline()));
    d.put("Component.focusColor", hex(p.accent()));
    d.put("Component.focusWidth", "1");
    d.put("Component.innerFocusWidth", "1");
    d.put("Component.arc", "6");
    d.put("Button.arc", "6");
    d.put("Button.background", hex(p.sheet()));
    d.put("Button.borderColor", hex(p.border()));
    d.put("ToggleButton.background", hex(p.sheet()));
    d.put("ToggleButton.selectedBackground", hex(p.accent()));
    d.put("ToggleButton.selectedForeground", hex(p.sheet()));
    d.put("Separator.foreground", hex(p.hairline()));
    d.put("TabbedPane.underlineColor", hex(p.accent()));
    d.put("TabbedPane.selectedForeground", hex(p.accent()));
    d.put("TabbedPane.tabInsets", "6,6,6,6");
    d.put("ScrollBar.width", "12");
    d.put("ScrollBar.thumb", hex(p.border()));
    d.put("TabbedPane.background", hex(p.sheet()));
    d.put("Slider.trackWidth", "3");
    d.put("Slider.thumbSize", "14,14");
    d.put("ToolTip.background", hex(p.sheet()));
    d.put("ToolTip.foreground", hex(p.ink()));
    d.put("List.selectionBackground", hex(p.accent()));
    d.put("List.selectionForeground", hex(p.sheet()));
    d.put("Component.minimumWidth", Long.toString(Math.round(24 * ratio)));
    d.put("MenuBar.borderColor", hex(p.hairline()));
    d.put("MenuBar.itemMargins", "4,8,4,8");
    d.put("MenuBar.background", hex(p.ground()));
    return d;
  }

  private static String hex(Color c) {
    return String.format("#%02X%02X%02X", c.getRed(), c.getGreen(), c.getBlue());
  }

  /** The colours. */
  public Palette palette() {
    return palette;
  }

  /** Paints in the colours of paper: a printer has no dark ground. Only on the event thread. */
  public void onPaper(Runnable painting) {
    Palette kept = palette;
    palette = Palette.PAPER;
    try {
      painting.run();
    } finally {
      palette = kept;
    }
  }

  /** Size of type over the usual (1). */
  public double ratio() {
    return ratio;
  }

  /** So many pixels at 100 %. */
  public int px(double usual) {
    return (int) Math.round(usual * ratio);
  }

  /** Most words. */
  public Font body() {
    return font(Font.PLAIN, 13);
  }

  /** Small print. */
  public Font note() {
    return font(Font.PLAIN, 11.5);
  }

  /** Names of tabs: all of them in one row, in the longer language too. */
  public Font tab() {
    return font(Font.PLAIN, 12);
  }

  /** Headings. */
  public Font heading() {
    return font(Font.BOLD, 14);
  }

  /** The one very large reading. */
  public Font reading() {
    return font(Font.BOLD, 50);
  }

  /** What a class reads. */
  public Font lesson() {
    return font(Font.PLAIN, 14.5);
  }

  /** What stands out beside the one very large reading. */
  public Font second() {
    return font(Font.BOLD, 19);
  }

  /** The same for a wall: nothing in soft ink, type and lines as large as the picture asks for. */
  public Theme projected(double ratio) {
    return new Theme(palette.projected(), ratio);
  }

  /** Readings on a wall. */
  public Font projectorReading() {
    return font(Font.BOLD, 26);
  }

  /** Headings on a wall. */
  public Font projectorHeading() {
    return font(Font.BOLD, 17.5);
  }

  private Font font(int style, double size) {
    return new Font(FlatInterFont.FAMILY, style, 1).deriveFont((float) (size * ratio));
  }
}
