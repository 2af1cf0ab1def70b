package halfwave.evidence;

/** How a heating call goes, as whoever stands before the furnace would put it. */
public enum Course {
  /** Lights, proves, runs on a good signal. */
  RUNS,
  /** Runs, on a weak signal. */
  RUNS_WEAKLY,
  /** Proves later than a clean furnace does, or only in a further trial, and then runs. */
  PROVES_LATE,
  /** Proves, and is lost again later. */
  IS_LOST,
  /** The burners light, are never proved, and go out at the end of each trial. */
  GOES_OUT,
  /** The gas valve opens, nothing lights. */
  DOES_NOT_LIGHT,
  /** The board never opens the gas valve. */
  DOES_NOT_START,
  /** The board sees a flame before there is any. */
  SEES_FALSE_FLAME,
  /** Burns on after the call has ended. */
  DOES_NOT_STOP
}
