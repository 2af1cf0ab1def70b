/** Voltage ladder, what limits the current, elasticities, messages. */
@NullMarked
package halfwave.explain;

import org.jspecify.annotations.NullMarked;
