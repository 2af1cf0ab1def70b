package halfwave.instrument;

import java.util.Arrays;

/** How a meter makes one number of an alternating wave; the mean is removed first. */
public enum AlternatingMethod {
  /** The root of the mean square. */
  TRUE_RMS,
  /**
   * The mean of the rectified wave times π/(2√2), which is the rms of a sine and of nothing else.
   */
  MEAN_RESPONDING;

  /** π/(2√2): rms over rectified mean of a sine. */
  private static final double SINE_FORM_RATIO = Math.PI / (2 * Math.sqrt(2));

  /**
   * The number for a wave.
   *
   * @param wave equally spaced samples of whole periods
   * @return in the unit of the samples; zero or above
   */
  public double of(double[] wave) {
    double mean = Arrays.stream(wave).sum() / wave.length;
    double sum = 0;
    for (double x : wave) {
      sum += this == TRUE_RMS ? (x - mean) * (x - mean) : Math.abs(x - mean);
    }
    double average = sum / wave.length;
    return this == TRUE_RMS ? Math.sqrt(average) : SINE_FORM_RATIO * average;
  }
}
