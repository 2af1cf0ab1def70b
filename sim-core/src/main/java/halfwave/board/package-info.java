/**
 * The control board: settings, sense filter and a pure two-phase state machine. It knows no
 * circuit: what it sees is a flame signal and a few switches, what it gives are outputs.
 *
 * <p>Time is counted in whole milliseconds. {@link halfwave.board.Board#settle} makes every
 * transition that is due at an instant, {@link halfwave.board.Board#dueMillis} says how long
 * nothing can happen by itself, {@link halfwave.board.Board#after} lets that time pass.
 *
 * <p>Terms: a <em>retry</em> follows a failed trial in which no flame was proved, a
 * <em>recycle</em> follows a flame that was proved and lost.
 */
@NullMarked
package halfwave.board;

import org.jspecify.annotations.NullMarked;
