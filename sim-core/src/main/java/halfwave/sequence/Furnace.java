package halfwave.sequence;

/**
 * What is physical about an appliance and lasts.
 *
 * @param draftRatio draft of the inducer over its full draft (1)
 * @param draftProved whether that draft holds a working pressure switch closed
 * @param gasRatio how far the burners have filled with gas (1)
 * @param igniterKelvin temperature of the hot surface (K)
 * @param litCount burners that burn, counted from the igniter
 * @param carryMillis how long the last of them has burnt (ms), as far as the next one waits for it
 * @param growthRatio strength of the flame at the rod over that of a grown one (1)
 * @param flickerRatio ln of the ion source over its mean, before its mean is set right (1)
 * @param rodKelvin temperature of the rod (K)
 * @param bodyKelvin temperature of what surrounds the rod (K)
 * @param overheated whether that holds a working limit open
 * @param shakenMillis how long a hand goes on shaking (ms)
 * @param filmMillis how long the rod has been in flame since its film last grew (ms), not counting
 *     time with air free of silicon
 * @param resting whether nothing of this changes by itself
 */
public record Furnace(
    double draftRatio,
    boolean draftProved,
    double gasRatio,
    double igniterKelvin,
    int litCount,
    long carryMillis,
    double growthRatio,
    double flickerRatio,
    double rodKelvin,
    double bodyKelvin,
    boolean overheated,
    long shakenMillis,
    long filmMillis,
    boolean resting) {

  /** Temperature of a room (K). */
  static final double ROOM_KELVIN = 300;

  /** An appliance that has stood still for hours. */
  public static final Furnace COLD =
      new Furnace(
          0, false, 0, ROOM_KELVIN, 0, 0, 0, 0, ROOM_KELVIN, ROOM_KELVIN, false, 0, 0, false);

  /** Whether anything burns. */
  public boolean burning() {
    return litCount > 0;
  }

  Furnace awake() {
    return with(false, shakenMillis, filmMillis);
  }

  Furnace asleep() {
    return with(true, shakenMillis, filmMillis);
  }

  Furnace shaken(long millis) {
    return with(false, millis, filmMillis);
  }

  /** With so much less time to grow a film in. */
  Furnace filmed(long millis) {
    return with(resting, shakenMillis, filmMillis - millis);
  }

  private Furnace with(boolean rests, long shaken, long film) {
    return new Furnace(
        draftRatio,
        draftProved,
        gasRatio,
        igniterKelvin,
        litCount,
        carryMillis,
        growthRatio,
        flickerRatio,
        rodKelvin,
        bodyKelvin,
        overheated,
        shaken,
        film,
        rests);
  }
}
