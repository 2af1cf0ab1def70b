/** The charts of the bench, and what they are drawn with. */
@NullMarked
package halfwave.gui.swing.charts;

import org.jspecify.annotations.NullMarked;
