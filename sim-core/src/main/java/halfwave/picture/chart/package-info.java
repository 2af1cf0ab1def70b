/** Charts of sweeps, sequences and forecasts, and plain plots and bars for notebooks. */
@NullMarked
package halfwave.picture.chart;

import org.jspecify.annotations.NullMarked;
