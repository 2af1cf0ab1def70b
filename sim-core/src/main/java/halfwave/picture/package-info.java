/**
 * Headless charts and drawings for commands, print, notebooks and window. They paint themselves;
 * {@code halfwave.paper} makes files and pages of them.
 */
@NullMarked
package halfwave.picture;

import org.jspecify.annotations.NullMarked;
