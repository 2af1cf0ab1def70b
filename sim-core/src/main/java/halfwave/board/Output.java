package halfwave.board;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** What a board can switch on, one by one. */
public enum Output {
  /** The combustion-air blower. */
  INDUCER(BoardOutputs::inducer),
  /** The hot surface. */
  IGNITER(BoardOutputs::igniter),
  /** The spark. */
  SPARK(BoardOutputs::spark),
  /** Gas to the pilot. */
  PILOT_VALVE(BoardOutputs::pilotValve),
  /** Gas to the burners. */
  MAIN_VALVE(BoardOutputs::mainValve),
  /** The circulating blower. */
  BLOWER(BoardOutputs::blower);

  private final Predicate<BoardOutputs> on;

  Output(Predicate<BoardOutputs> on) {
    this.on = on;
  }

  /** Whether it is on. */
  public boolean on(BoardOutputs outputs) {
    return on.test(outputs);
  }

  /** Those that are on. */
  public static List<Output> running(BoardOutputs outputs) {
    return Arrays.stream(values()).filter(output -> output.on(outputs)).toList();
  }
}
