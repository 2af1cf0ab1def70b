/**
 * The bench in the window: its one state, what a hand may ask of it, and what the drawing and the
 * panels around it show of it.
 */
@NullMarked
package halfwave.gui.presentation.bench;

import org.jspecify.annotations.NullMarked;
