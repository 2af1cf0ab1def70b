package halfwave.board;

import java.util.List;

/**
 * A board after an instant.
 *
 * @param state what it remembers now
 * @param transitions what it did, in order; none if nothing was due
 */
public record BoardStep(BoardState state, List<Transition> transitions) {}
