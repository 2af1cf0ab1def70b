/** Taking a quiz, and practising: calls, what can be done on them, conclusions. */
@NullMarked
package halfwave.gui.swing.quiz;

import org.jspecify.annotations.NullMarked;
