/** Demonstrations as they are shown: the panel in the window, and the wall before a class. */
@NullMarked
package halfwave.gui.swing.lesson;

import org.jspecify.annotations.NullMarked;
