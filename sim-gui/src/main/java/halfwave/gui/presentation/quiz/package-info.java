/** Service calls as a learner meets them: taking a quiz, and practising. */
@NullMarked
package halfwave.gui.presentation.quiz;

import org.jspecify.annotations.NullMarked;
