package halfwave.board;

import halfwave.message.Message;

/**
 * One step of a board.
 *
 * @param from stage before
 * @param to stage after; the same where only something remembered has changed
 * @param cause why
 */
public record Transition(Stage from, Stage to, Message cause) {}
