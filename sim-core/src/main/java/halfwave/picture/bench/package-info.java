/**
 * The drawing of a whole sense circuit: where everything stands on a sheet of a size, what paints
 * it, its words, and what a drag of the rod means. {@code BenchDrawing} is the way in.
 */
@NullMarked
package halfwave.picture.bench;

import org.jspecify.annotations.NullMarked;
