/**
 * Quizzes, orders of work, answer sheets, marks, and what a learner has practised. As the last
 * theme it can tell all kinds of files apart.
 */
@NullMarked
package halfwave.io.quiz;

import org.jspecify.annotations.NullMarked;
