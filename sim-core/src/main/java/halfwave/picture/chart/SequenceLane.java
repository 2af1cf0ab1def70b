package halfwave.picture.chart;

import halfwave.message.Argument;
import java.awt.Color;

/**
 * One lane of a timeline.
 *
 * @param name what it shows
 * @param ink colour of what is on
 * @param track the stretches
 */
record SequenceLane(Argument name, Color ink, SequenceTrack track) {}
