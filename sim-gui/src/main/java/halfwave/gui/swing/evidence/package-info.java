/** Panels of what readings say: evidence, matching, forecast, and why. */
@NullMarked
package halfwave.gui.swing.evidence;

import org.jspecify.annotations.NullMarked;
