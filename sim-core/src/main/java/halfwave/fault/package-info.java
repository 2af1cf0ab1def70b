/**
 * Faults: each a change of the bench with a severity in physical units, and nothing else. Whether a
 * fault is there is asked of the condition. Any two faults commute, because what they change joins
 * what is there already.
 *
 * <pre>
 * Fault = kind, severity, trigger or none -> changes of a bench
 * </pre>
 */
@NullMarked
package halfwave.fault;

import org.jspecify.annotations.NullMarked;
