package halfwave.gui.presentation.bench;

import halfwave.circuit.Part;
import halfwave.picture.scene.DrawnPart;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;

/** Which part of the drawing an element of the circuit is. */
public final class LitParts {

  private LitParts() {}

  /** The parts of the drawing for elements that are spoken about. */
  public static Set<DrawnPart> of(Collection<Part> parts) {
    return parts.stream().map(LitParts::of).collect(Collectors.toSet());
  }

  /** The same for one of them. */
  public static DrawnPart of(Part part) {
    return switch (part) {
      case SOURCE, SOURCE_RESISTANCE, COUPLING, RETURN -> DrawnPart.BOARD;
      case CONNECTOR -> DrawnPart.CONNECTOR;
      case LEAD, CABLE -> DrawnPart.SENSE_LEAD;
      case INSULATION -> DrawnPart.INSULATOR;
      case ROD_FILM, ROD_FILM_CAPACITANCE, ROD_SHEATH -> DrawnPart.ROD;
      case FLAME -> DrawnPart.FLAME;
      case BURNER_SHEATH, BURNER_FILM, BURNER_FILM_CAPACITANCE -> DrawnPart.BURNER;
      case GROUND -> DrawnPart.GROUND_STRAP;
      case PROBE_SHEATH, SPARK_WINDING -> DrawnPart.IGNITER;
      case DEPOSIT -> DrawnPart.DEPOSIT;
      case JUMPER -> DrawnPart.JUMPER;
      case METER, METER_CAPACITANCE, SECOND_METER, SECOND_METER_CAPACITANCE, WIRE_SHEATH ->
          DrawnPart.METER;
    };
  }
}
