/** Panels: they render views and pass on intents; they decide nothing and compute nothing. */
@NullMarked
package halfwave.gui.swing;

import org.jspecify.annotations.NullMarked;
