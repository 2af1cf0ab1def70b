package halfwave.gui.presentation.evidence;

import halfwave.forecast.Calendar;
import halfwave.forecast.Forecasted;
import org.jspecify.annotations.Nullable;

/**
 * What came of a forecast.
 *
 * @param forecasted what came of it
 * @param calendar its dates
 */
public record ForecastAnswer(Forecasted forecasted, @Nullable Calendar calendar) {}
