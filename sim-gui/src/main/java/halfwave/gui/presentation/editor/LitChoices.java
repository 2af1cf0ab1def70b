package halfwave.gui.presentation.editor;

import halfwave.circuit.Part;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.LitParts;
import halfwave.gui.presentation.bench.PartCard;
import halfwave.picture.scene.DrawnPart;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Parts of the drawing that a step may light up. */
public final class LitChoices {

  /** One element of the circuit for each part of the drawing that is one. */
  private static final List<Part> OFFERED =
      List.of(
          Part.SOURCE,
          Part.CONNECTOR,
          Part.LEAD,
          Part.INSULATION,
          Part.ROD_SHEATH,
          Part.FLAME,
          Part.BURNER_SHEATH,
          Part.GROUND,
          Part.PROBE_SHEATH,
          Part.DEPOSIT,
          Part.JUMPER,
          Part.METER);

  private LitChoices() {}

  /**
   * A part that may be lit.
   *
   * @param drawn the part
   * @param name its name
   * @param lit whether it is
   */
  public record Choice(DrawnPart drawn, String name, boolean lit) {}

  /** All there are. */
  public static List<Choice> of(Set<Part> lit, Wording words) {
    Set<DrawnPart> on = LitParts.of(lit);
    List<Choice> choices = new ArrayList<>();
    for (Part part : OFFERED) {
      DrawnPart drawn = LitParts.of(part);
      choices.add(
          new Choice(drawn, Wording.capital(words.text(PartCard.key(drawn))), on.contains(drawn)));
    }
    return choices;
  }

  /** With one more lit, or without all that it stands for. */
  public static Set<Part> with(Set<Part> lit, DrawnPart drawn, boolean on) {
    Set<Part> other = EnumSet.noneOf(Part.class);
    other.addAll(lit);
    other.removeIf(part -> LitParts.of(part) == drawn);
    if (on) {
      OFFERED.stream().filter(part -> LitParts.of(part) == drawn).forEach(other::add);
    }
    return other;
  }
}
