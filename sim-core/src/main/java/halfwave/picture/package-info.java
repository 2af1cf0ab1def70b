/**
 * Headless pictures for commands, print, notebooks and window, and what all of them are drawn with:
 * colours, type, strokes, and words that cover nothing. They paint themselves; {@code
 * halfwave.paper} makes files and pages of them.
 */
@NullMarked
package halfwave.picture;

import org.jspecify.annotations.NullMarked;
