/**
 * What readings say: which faults they speak for, which bench they fit, how they go on, and why
 * they are what they are.
 */
@NullMarked
package halfwave.gui.presentation.evidence;

import org.jspecify.annotations.NullMarked;
