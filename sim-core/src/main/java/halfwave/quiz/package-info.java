/**
 * Service calls to examine with: complaint, hidden faults, limits; the quiz they make up; a visit
 * replayed from what was done; the answer sheet.
 */
@NullMarked
package halfwave.quiz;

import org.jspecify.annotations.NullMarked;
