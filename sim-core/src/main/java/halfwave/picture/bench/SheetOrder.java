package halfwave.picture.bench;

import halfwave.picture.scene.DrawnPart;
import java.util.List;

/** Which part is found first where several are: small ones over large ones. */
final class SheetOrder {

  private static final List<DrawnPart> FIRST =
      List.of(
          DrawnPart.STATUS_LIGHT,
          DrawnPart.SENSE_TERMINAL,
          DrawnPart.COMMON_TERMINAL,
          DrawnPart.VALVE_TERMINALS,
          DrawnPart.CONNECTOR,
          DrawnPart.METER,
          DrawnPart.LEAK,
          DrawnPart.JUMPER,
          DrawnPart.DEPOSIT,
          DrawnPart.ROD,
          DrawnPart.INSULATOR,
          DrawnPart.IGNITER,
          DrawnPart.SENSE_LEAD,
          DrawnPart.GROUND_STRAP,
          DrawnPart.GAS_VALVE,
          DrawnPart.SUPPLY,
          DrawnPart.BOARD,
          DrawnPart.CHASSIS,
          DrawnPart.BURNER,
          DrawnPart.FLAME,
          DrawnPart.FRONT);

  private SheetOrder() {}

  static boolean over(DrawnPart one, DrawnPart other) {
    return FIRST.indexOf(one) < FIRST.indexOf(other);
  }
}
