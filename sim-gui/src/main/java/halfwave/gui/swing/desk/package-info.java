/** The instructor's desk: forms of quizzes and orders of work, a class and its marks. */
@NullMarked
package halfwave.gui.swing.desk;

import org.jspecify.annotations.NullMarked;
