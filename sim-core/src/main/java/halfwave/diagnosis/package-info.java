/**
 * From what was seen back to what is wrong: causes and how each looks on many benches alike but not
 * the same, belief after readings and repairs, what to check next, and when checking no longer
 * pays.
 */
@NullMarked
package halfwave.diagnosis;

import org.jspecify.annotations.NullMarked;
