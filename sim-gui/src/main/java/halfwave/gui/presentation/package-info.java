/**
 * What every theme of the window uses: its words and pages of help, what is remembered from one day
 * to the next, and work that is done away from the screen.
 */
@NullMarked
package halfwave.gui.presentation;

import org.jspecify.annotations.NullMarked;
