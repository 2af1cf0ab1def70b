/**
 * Marks from answer sheets: everything is played again and computed anew; reports of a class; how
 * simulated learners fare.
 */
@NullMarked
package halfwave.grading;

import org.jspecify.annotations.NullMarked;
