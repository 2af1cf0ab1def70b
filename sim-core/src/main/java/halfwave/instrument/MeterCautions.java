package halfwave.instrument;

import halfwave.circuit.Point;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.List;

/** What is dangerous or wrong about a function on a hook-up, before anything is measured. */
final class MeterCautions {

  private MeterCautions() {}

  static List<Message> of(MeterFunction function, HookUp hookUp, Subject subject) {
    List<MessageKey> keys = new ArrayList<>();
    if (subject.sparksAt(hookUp) || hookUp.touches(Point.PROBE)) {
      keys.add(MessageKey.METER_ON_SPARK_ELECTRODE);
    }
    if (function.isResistance() && subject.live()) {
      keys.add(MessageKey.METER_OHMS_LIVE);
    }
    if (hookUp instanceof AcrossSupply) {
      keys.addAll(onSupply(function));
    } else if (hookUp instanceof InSenseLead) {
      keys.addAll(inSenseLead(function));
    } else {
      keys.addAll(across(function, hookUp));
    }
    return keys.stream().map(Message::of).toList();
  }

  private static List<MessageKey> onSupply(MeterFunction function) {
    if (function.isCurrent()) {
      return List.of(MessageKey.METER_AMPS_ON_SUPPLY);
    }
    return function == MeterFunction.DC_VOLTS ? List.of(MessageKey.METER_DC_WHERE_AC) : List.of();
  }

  private static List<MessageKey> inSenseLead(MeterFunction function) {
    return switch (function) {
      case AC_MICROAMPS -> List.of(MessageKey.METER_AC_WHERE_DC);
      case AC_MILLIAMPS -> List.of(MessageKey.METER_AC_WHERE_DC, MessageKey.METER_TOO_COARSE);
      case DC_MILLIAMPS -> List.of(MessageKey.METER_TOO_COARSE);
      case AC_VOLTS, DC_VOLTS, LOW_IMPEDANCE_AC_VOLTS -> List.of(MessageKey.METER_VOLTS_IN_SERIES);
      case DC_MICROAMPS, AC_AND_DC_MICROAMPS, OHMS, CONTINUITY -> List.of();
    };
  }

  private static List<MessageKey> across(MeterFunction function, HookUp hookUp) {
    boolean surface = hookUp.touches(Point.ROD_SURFACE) || hookUp.touches(Point.BURNER_SURFACE);
    if (function.isCurrent()) {
      return List.of(MessageKey.METER_AMPS_ACROSS);
    }
    if (function == MeterFunction.LOW_IMPEDANCE_AC_VOLTS) {
      return List.of(MessageKey.METER_LOW_IMPEDANCE);
    }
    return function.isResistance() && surface
        ? List.of(MessageKey.METER_OHMS_THROUGH_FILM)
        : List.of();
  }
}
