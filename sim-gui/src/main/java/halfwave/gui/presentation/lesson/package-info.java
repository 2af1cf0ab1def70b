/** Demonstrations as they are shown: in the window, and on a wall before a class. */
@NullMarked
package halfwave.gui.presentation.lesson;

import org.jspecify.annotations.NullMarked;
