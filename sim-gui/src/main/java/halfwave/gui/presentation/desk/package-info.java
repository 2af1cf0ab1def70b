/** The instructor's desk: quizzes and orders of work are written at it, answer sheets marked. */
@NullMarked
package halfwave.gui.presentation.desk;

import org.jspecify.annotations.NullMarked;
