package halfwave.picture.bench;

import java.awt.geom.Rectangle2D;

/**
 * Words on a drawing.
 *
 * @param text the words
 * @param bounds where they stand, in pixels
 */
public record Label(String text, Rectangle2D bounds) {}
