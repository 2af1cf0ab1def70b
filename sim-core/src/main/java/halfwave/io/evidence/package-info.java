/**
 * What was seen, and what is made of it: logs and readings, tables of symptoms and cases, priors,
 * diagnoses, matches and forecasts.
 */
@NullMarked
package halfwave.io.evidence;

import org.jspecify.annotations.NullMarked;
