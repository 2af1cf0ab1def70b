/**
 * What is taught with a bench: demonstrations that ask for a prediction before they show.
 *
 * <pre>
 * Demonstration = words, bench, board, seed, start, steps
 * Step = words, question or none, play, explanation or none, claims, parts to light up
 * Rehearsal.of(Demonstration) = performances, doubts
 * Playthrough = demonstration, step, revealed, votes, moments
 * Draft = the same as Demonstration, and may still have gaps
 * </pre>
 *
 * <p>The right answer of a question carries claims that the model has to prove; a test rehearses
 * every shipped demonstration. Nothing here knows a clock or a window.
 */
@NullMarked
package halfwave.lesson;

import org.jspecify.annotations.NullMarked;
