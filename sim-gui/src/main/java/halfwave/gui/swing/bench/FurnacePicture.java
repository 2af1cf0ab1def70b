package halfwave.gui.swing.bench;

import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Painted;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import java.awt.Graphics;
import java.awt.Graphics2D;
import org.jspecify.annotations.Nullable;

/** The furnace of a service call: to look at, not to touch. */
public final class FurnacePicture extends Painted {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private transient @Nullable DrawnBench drawn;

  /**
   * A picture.
   *
   * @param key its name; with {@code -spoken} in the bundle, what it shows
   */
  public FurnacePicture(Theme theme, Wording words, String key) {
    this.theme = theme;
    this.words = words;
    setName(key);
    getAccessibleContext().setAccessibleName(words.text(key + "-spoken"));
    setToolTipText(words.text(key + "-spoken"));
  }

  /** Shows a furnace, or none. */
  public void show(@Nullable DrawnBench bench) {
    if (bench != drawn) {
      drawn = bench;
      repaint();
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    DrawnBench bench = drawn;
    if (bench != null) {
      DrawingStyle style =
          DrawingStyle.still(theme.palette(), words.sentences()).withScale(theme.ratio());
      Graphics2D g = (Graphics2D) graphics.create();
      BenchDrawing.picture(getSize(), bench, style).paint(g);
      g.dispose();
    }
  }
}
