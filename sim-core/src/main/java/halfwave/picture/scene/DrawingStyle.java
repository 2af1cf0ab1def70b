package halfwave.picture.scene;

import halfwave.display.Sentences;
import halfwave.picture.Palette;
import halfwave.quantity.Guard;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How a bench is drawn.
 *
 * @param palette the colours
 * @param sentences language and units
 * @param view from where the flame zone is seen
 * @param scaleRatio size of type and lines over that of 13 px type (1); 0.5 to 8
 * @param lit parts under a broad glow, to say which ones are spoken about
 * @param focused the part that the keyboard is on, or null
 * @param livelyRatio phase of the flame's gentle motion, in rounds (1)
 * @param cycleRatio phase of the slowed mains cycle, in cycles (1); the rod is positive in the
 *     first half
 * @param motion whether anything may move; without it both arrows stand still, side by side
 */
public record DrawingStyle(
    Palette palette,
    Sentences sentences,
    DrawnView view,
    double scaleRatio,
    Set<DrawnPart> lit,
    @Nullable DrawnPart focused,
    double livelyRatio,
    double cycleRatio,
    boolean motion) {

  /** Checks the domain and takes a copy. */
  public DrawingStyle {
    Guard.inRange("scaleRatio", scaleRatio, 0.5, 8);
    Guard.finite("livelyRatio", livelyRatio);
    Guard.finite("cycleRatio", cycleRatio);
    lit = Set.copyOf(lit);
  }

  /** At rest and seen from above, as on paper. */
  public static DrawingStyle still(Palette palette, Sentences sentences) {
    return new DrawingStyle(palette, sentences, DrawnView.ABOVE, 1, Set.of(), null, 0, 0, false);
  }

  /** The same from elsewhere. */
  public DrawingStyle with(DrawnView other) {
    return new DrawingStyle(
        palette, sentences, other, scaleRatio, lit, focused, livelyRatio, cycleRatio, motion);
  }

  /** The same with larger or smaller type (1). */
  public DrawingStyle withScale(double ratio) {
    return new DrawingStyle(
        palette, sentences, view, ratio, lit, focused, livelyRatio, cycleRatio, motion);
  }

  /** The same with other parts under a glow, and another one in focus. */
  public DrawingStyle pointing(Set<DrawnPart> parts, @Nullable DrawnPart focus) {
    return new DrawingStyle(
        palette, sentences, view, scaleRatio, parts, focus, livelyRatio, cycleRatio, motion);
  }

  /** The same at another instant of its motion (1). */
  public DrawingStyle moving(double lively, double cycle) {
    return new DrawingStyle(
        palette, sentences, view, scaleRatio, lit, focused, lively, cycle, true);
  }
}
