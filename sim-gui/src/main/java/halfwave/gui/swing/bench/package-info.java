/** The drawing of the bench and the panels around it. */
@NullMarked
package halfwave.gui.swing.bench;

import org.jspecify.annotations.NullMarked;
