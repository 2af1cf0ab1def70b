/**
 * What the charts of the bench show: the strip, the waves, the ladder of voltages, the map of the
 * flame, what-if and the history.
 */
@NullMarked
package halfwave.gui.presentation.charts;

import org.jspecify.annotations.NullMarked;
