package halfwave.diagnosis;

import halfwave.fault.FaultKind;
import halfwave.work.Repair;
import java.util.EnumSet;
import java.util.Set;

/** What a repair may leave broken, by where it is done [common practice, no source]. */
final class Mishaps {

  private Mishaps() {}

  static Set<FaultKind> of(Repair repair) {
    return switch (repair.part()) {
      case ROD, INSULATOR -> EnumSet.of(FaultKind.ROD_ABOVE_FLAME, FaultKind.CERAMIC_CRACKED);
      case SENSE_LEAD, BOARD_CONNECTOR, BOARD -> EnumSet.of(FaultKind.CONNECTOR_OFF);
      case GROUND_STRAP -> EnumSet.of(FaultKind.GROUND_LOST);
      case IGNITER -> EnumSet.of(FaultKind.IGNITER_BROKEN);
      case BURNERS, CROSSOVER -> EnumSet.of(FaultKind.ROD_ABOVE_FLAME, FaultKind.GAS_SHUT);
      case GAS_VALVE, MANIFOLD_TAP, HEAT_EXCHANGER -> EnumSet.of(FaultKind.GAS_SHUT);
      default -> EnumSet.noneOf(FaultKind.class);
    };
  }
}
