package halfwave.paper;

import halfwave.display.Sentences;
import halfwave.picture.Palette;
import halfwave.picture.Picture;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnView;
import halfwave.sequence.Moment;
import java.awt.Dimension;

/** The drawing of a bench as a picture of its own. */
public final class BenchPicture {

  /** Roomy enough for every label. */
  private static final Dimension SIZE = new Dimension(960, 600);

  private BenchPicture() {}

  /**
   * The drawing at a moment, at rest, on white; solves what it shows.
   *
   * @param moment the moment
   * @param view from where the flame zone is seen
   * @param sentences language and units
   */
  public static Picture of(Moment moment, DrawnView view, Sentences sentences) {
    DrawingStyle style = DrawingStyle.still(Palette.PAPER, sentences).with(view);
    return BenchDrawing.picture(SIZE, new DrawnMoments(sentences).of(moment), style);
  }
}
