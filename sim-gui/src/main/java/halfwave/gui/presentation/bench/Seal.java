package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.BenchFlame;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bench whose condition is hidden, so that a class has to find out what is wrong with it.
 *
 * @param drawn the fault that was drawn, or null: the bench was hidden as it stood
 * @param known the bench as it is in good order: what is drawn while it is hidden
 * @param flame the flame of that bench: of the real one only is drawn whether it burns
 * @param before what was there before; it comes back at the end
 * @param opening what the class found out and did, once it is revealed; null while it is hidden
 */
public record Seal(
    @Nullable Fault drawn, Bench known, BenchFlame flame, State before, @Nullable Opening opening) {

  /** The same, opened so far. */
  Seal with(Opening newOpening) {
    return new Seal(drawn, known, flame, before, newOpening);
  }

  /**
   * What is known once the condition is revealed.
   *
   * @param answer what the class believes, or null
   * @param hidden the bench as it was when it was hidden
   * @param path what was done, in order
   * @param at which step of it is looked at; its size: the end
   */
  public record Opening(@Nullable FaultKind answer, Bench hidden, List<PathStep> path, int at) {
    /** Takes a copy. */
    public Opening {
      path = List.copyOf(path);
    }
  }

  /** Whether the condition is hidden. */
  public boolean closed() {
    return opening == null;
  }
}
