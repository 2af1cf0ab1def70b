package halfwave.gui.presentation.bench;

import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.sequence.Deed;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * One movement of the rod by a hand: one act, however many places it goes through. What the hand
 * has once moved is set every time, because a later place may take that of an earlier one which was
 * never done.
 */
public final class RodGesture {

  private static final Map<Parameter, ToDoubleFunction<RodPosition>> NUMBERS =
      new EnumMap<>(
          Map.of(
              Parameter.ROD_ACROSS, RodPosition::acrossMeters,
              Parameter.ROD_UP, RodPosition::upMeters,
              Parameter.ROD_ALONG, RodPosition::alongMeters,
              Parameter.ROD_TURN, RodPosition::turnRadians,
              Parameter.ROD_TILT, RodPosition::tiltRadians,
              Parameter.ROD_BEND, RodPosition::bendRadians));

  private final RodPosition start;
  private final long number;
  private final List<Parameter> touched = new ArrayList<>();

  /**
   * Begins.
   *
   * @param start where the rod stands
   * @param number of the gesture; zero: each place is an act of its own
   */
  public RodGesture(RodPosition start, long number) {
    this.start = start;
    this.number = number;
  }

  /** Where the rod stood when it began. */
  public RodPosition start() {
    return start;
  }

  /** The rod goes there. */
  public Intent to(RodPosition place) {
    NUMBERS.forEach(
        (parameter, number) -> {
          boolean moved = number.applyAsDouble(start) != number.applyAsDouble(place);
          if (moved && !touched.contains(parameter)) {
            touched.add(parameter);
          }
        });
    List<Deed> deeds = new ArrayList<>();
    for (Parameter parameter : touched) {
      double si = NUMBERS.getOrDefault(parameter, p -> 0).applyAsDouble(place);
      deeds.add(new Deed.Alter(Change.Turned.to(parameter, si)));
    }
    return new Intent.Act(deeds, number);
  }
}
