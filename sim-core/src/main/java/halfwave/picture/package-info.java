/**
 * Headless charts, drawings and pages (PNG, SVG, PDF) for commands, print, notebooks and window.
 */
@NullMarked
package halfwave.picture;

import org.jspecify.annotations.NullMarked;
