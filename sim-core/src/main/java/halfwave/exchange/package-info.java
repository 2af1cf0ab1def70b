/**
 * What leaves a quiz for other systems: gradebooks as CSV, items as a QTI content package, and
 * statements of the Experience API. Texts and bytes only; nothing is sent. The same marks give the
 * same bytes.
 */
@NullMarked
package halfwave.exchange;

import org.jspecify.annotations.NullMarked;
