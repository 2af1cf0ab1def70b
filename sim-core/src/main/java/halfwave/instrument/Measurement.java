package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.message.Message;
import java.util.List;

/**
 * What came of putting a meter somewhere.
 *
 * @param shown what is on its display
 * @param loaded the sense circuit with the meter in it: what the board sees meanwhile
 * @param meter the meter afterwards
 * @param cautions what was dangerous or wrong about it
 */
public record Measurement(Shown shown, Circuit loaded, Meter meter, List<Message> cautions) {

  /** Takes a copy. */
  public Measurement {
    cautions = List.copyOf(cautions);
  }
}
