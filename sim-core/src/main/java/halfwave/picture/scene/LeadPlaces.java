package halfwave.picture.scene;

import halfwave.circuit.Point;
import halfwave.display.Sentences;
import halfwave.instrument.HookUp;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.work.FurnacePart;

/** Where the leads of a meter are, in a sentence. */
public final class LeadPlaces {

  private LeadPlaces() {}

  /** The sentence. */
  public static String text(HookUp hookUp, Sentences sentences) {
    return sentences.text(message(hookUp));
  }

  private static Message message(HookUp hookUp) {
    if (hookUp instanceof HookUp.InSenseLead series) {
      return Message.of(MessageKey.DESCRIBED_SERIES, Argument.name(series.end()));
    } else if (hookUp instanceof HookUp.AcrossSupply supply) {
      return leads(Argument.name(supply.red()), Argument.name(supply.black()));
    } else if (hookUp instanceof HookUp.Across across) {
      return leads(point(across.red()), point(across.black()));
    } else if (hookUp instanceof HookUp.WireInFlame held) {
      Argument wire = Argument.nested(Message.of(MessageKey.DRAWING_WIRE));
      Argument other = point(held.other());
      return leads(held.redOnWire() ? wire : other, held.redOnWire() ? other : wire);
    }
    throw new IllegalStateException("no words for " + hookUp);
  }

  private static Message leads(Argument red, Argument black) {
    return Message.of(MessageKey.DESCRIBED_LEADS, red, black);
  }

  private static Argument point(Point point) {
    return switch (point) {
      case COMMON -> Argument.nested(Message.of(MessageKey.DESCRIBED_COMMON));
      case TERMINAL -> Argument.nested(Message.of(MessageKey.DESCRIBED_TERMINAL));
      case LEAD -> Argument.name(FurnacePart.BOARD_CONNECTOR);
      case BURNER_SURFACE -> Argument.name(FurnacePart.BURNERS);
      case CHASSIS -> Argument.nested(Message.of(MessageKey.DRAWING_CHASSIS));
      case PROBE -> Argument.name(FurnacePart.IGNITER);
      default -> Argument.name(FurnacePart.ROD);
    };
  }
}
