package halfwave.diagnosis;

/**
 * What a check would bring now.
 *
 * @param check the check
 * @param gainBits information expected about what is wrong (bits)
 * @param effortSeconds its time, and time for its hazards (s)
 * @param worthSeconds expected effort of all that follows without it, less that with it (s); below
 *     zero it does not pay
 */
public record CheckAdvice(Check check, double gainBits, double effortSeconds, double worthSeconds) {

  /** Information for each minute (bits). */
  public double meritBits() {
    return gainBits / (effortSeconds / 60);
  }

  /** Whether it saves more than it takes. */
  public boolean pays() {
    return worthSeconds > 0;
  }
}
