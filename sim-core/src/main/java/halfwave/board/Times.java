package halfwave.board;

import halfwave.quantity.Guard;

/**
 * How long each stage of a board lasts, in whole milliseconds. Zero leaves a stage out.
 *
 * @param restartMillis blower alone after power returns during a call
 * @param selfCheckMillis self-check and false-flame check before every start
 * @param pressureProofMillis the pressure switch has to close within this; zero: there is no switch
 * @param pressureRetryMillis pause after a switch that did not close
 * @param prePurgeMillis air before the first trial
 * @param warmUpMillis igniter glows with the valve shut, on a first trial
 * @param retryWarmUpMillis the same on further trials
 * @param ignitionActivationMillis igniter or spark stays on after the valve has opened
 * @param trialMillis valve open without a proved flame, at most; proving included
 * @param provingMillis the signal has to hold for this before the flame is proved
 * @param interPurgeMillis air between trials
 * @param postPurgeMillis air after the burners
 * @param blowerOnMillis from proof to the circulating blower
 * @param blowerOffMillis from the end of the flame to the blower's
 */
public record Times(
    long restartMillis,
    long selfCheckMillis,
    long pressureProofMillis,
    long pressureRetryMillis,
    long prePurgeMillis,
    long warmUpMillis,
    long retryWarmUpMillis,
    long ignitionActivationMillis,
    long trialMillis,
    long provingMillis,
    long interPurgeMillis,
    long postPurgeMillis,
    long blowerOnMillis,
    long blowerOffMillis) {

  private static final long LONGEST_MILLIS = 3_600_000;

  /** Checks that no time contradicts another. */
  public Times {
    Guard.inRange("restartMillis", restartMillis, 0, LONGEST_MILLIS);
    Guard.inRange("selfCheckMillis", selfCheckMillis, 0, LONGEST_MILLIS);
    Guard.inRange("pressureProofMillis", pressureProofMillis, 0, LONGEST_MILLIS);
    // without a pause the inducer would start and stop in no time
    Guard.inRange("pressureRetryMillis", pressureRetryMillis, 1000, LONGEST_MILLIS);
    Guard.inRange("prePurgeMillis", prePurgeMillis, 0, LONGEST_MILLIS);
    Guard.inRange("warmUpMillis", warmUpMillis, 0, LONGEST_MILLIS);
    Guard.inRange("retryWarmUpMillis", retryWarmUpMillis, 0, LONGEST_MILLIS);
    Guard.inRange("trialMillis", trialMillis, 1000, 120_000);
    Guard.inRange("ignitionActivationMillis", ignitionActivationMillis, 0, trialMillis);
    Guard.inRange("provingMillis", provingMillis, 0, trialMillis - 1);
    Guard.inRange("interPurgeMillis", interPurgeMillis, 0, LONGEST_MILLIS);
    Guard.inRange("postPurgeMillis", postPurgeMillis, 0, LONGEST_MILLIS);
    Guard.inRange("blowerOnMillis", blowerOnMillis, 0, LONGEST_MILLIS);
    Guard.inRange("blowerOffMillis", blowerOffMillis, 0, LONGEST_MILLIS);
  }

  /** Whether the board waits for a pressure switch. */
  public boolean hasPressureSwitch() {
    return pressureProofMillis > 0;
  }
}
