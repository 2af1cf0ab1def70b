package halfwave.board;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Generic boards. Each value lies inside the ranges that product literature of several kinds shows
 * [seen], and they are mixed: no board has the whole column of any one source.
 */
public final class ShippedBoards {

  private static final long SECOND = 1000;
  private static final long MINUTE = 60 * SECOND;
  private static final long HOUR = 60 * MINUTE;

  /** Pick-up 0.8, drop-out 0.5, warning 1.5 µA [derived]; short from 20 µA AC [practice]. */
  private static final Sensing SENSING =
      new Sensing(0.8e-6, 0.5e-6, 1.5e-6, 20e-6, 0.2, 800, 3000, false);

  private static final BoardSettings DEFAULT =
      new BoardSettings(
          "carbide-four-trials",
          Ignition.HOT_SURFACE,
          SENSING,
          furnace(0, 15, 17, 20, 3, 5_000, 1000, 30, 5, 30, 120),
          counting(4, 5, LossCount.NEVER, HOUR, 10 * SECOND),
          null);

  private static final List<BoardSettings> ALL =
      List.of(
          DEFAULT,
          new BoardSettings(
              "carbide-three-hours",
              Ignition.HOT_SURFACE,
              new Sensing(1.0e-6, 0.5e-6, 2.0e-6, 20e-6, 0.3, 2000, 4000, true),
              furnace(90, 20, 17, 27, 4, 7_000, 2000, 25, 15, 25, 90),
              counting(5, 4, LossCount.EARLY, 3 * HOUR, null),
              null),
          new BoardSettings(
              "nitride-five-trials",
              Ignition.HOT_SURFACE_NITRIDE,
              new Sensing(0.7e-6, 0.4e-6, 1.4e-6, 20e-6, 0.15, 1000, 3000, false),
              furnace(0, 30, 5, 10, 2, 4_000, 500, 20, 30, 45, 180),
              counting(5, 0, LossCount.ALWAYS, HOUR, 5 * SECOND),
              null),
          new BoardSettings(
              "nitride-learning",
              Ignition.HOT_SURFACE_NITRIDE,
              SENSING,
              furnace(0, 15, 30, 30, 3, 6_000, 1000, 30, 10, 30, 60),
              counting(3, 5, LossCount.EARLY, HOUR, 10 * SECOND),
              new WarmUpLearning(4 * SECOND, 7 * SECOND, 50 * SECOND)),
          new BoardSettings(
              "spark-three-trials",
              Ignition.DIRECT_SPARK,
              SENSING,
              spark(20, 6, 7_000, 500, 24, 30, 45, 90),
              counting(3, 5, LossCount.NEVER, HOUR, 10 * SECOND),
              null),
          new BoardSettings(
              "spark-one-loss",
              Ignition.DIRECT_SPARK,
              new Sensing(1.0e-6, 0.7e-6, 2.0e-6, 30e-6, 0.1, 500, 2000, true),
              spark(30, 4, 5_000, 400, 30, 15, 30, 120),
              new Counting(
                  1, 1, LossCount.ALWAYS, 10 * SECOND, null, null, 5 * SECOND, 5000, 25_000L),
              null),
          new BoardSettings(
              "pilot-retry",
              Ignition.INTERMITTENT_PILOT,
              new Sensing(0.6e-6, 0.4e-6, 1.2e-6, 20e-6, 0.2, 800, 3000, false),
              pilot(70_000, 15),
              counting(3, 0, LossCount.NEVER, 6 * MINUTE, 5 * SECOND),
              null),
          new BoardSettings(
              "pilot-one-trial",
              Ignition.INTERMITTENT_PILOT,
              SENSING,
              pilot(85_000, 30),
              new Counting(
                  1,
                  3,
                  LossCount.NEVER,
                  10 * SECOND,
                  null,
                  30 * SECOND,
                  10 * SECOND,
                  5 * MINUTE,
                  null),
              null));

  private ShippedBoards() {}

  /** All of them, the standard one first. */
  public static List<BoardSettings> all() {
    return ALL;
  }

  /** The one of that name. */
  public static Optional<BoardSettings> named(String name) {
    return ALL.stream().filter(b -> b.name().equals(name)).findFirst();
  }

  /**
   * The one that somebody chose for an appliance.
   *
   * @param name its name, or null: the standard one
   * @param ignition how the appliance lights its gas
   * @throws IllegalArgumentException if there is none of that name, or it is made for another way
   */
  public static BoardSettings chosen(@Nullable String name, Ignition ignition) {
    if (name == null) {
      return standard(ignition);
    }
    BoardSettings board =
        named(name)
            .orElseThrow(() -> new IllegalArgumentException("board = " + name + ": a shipped one"));
    if (!board.ignition().fits(ignition)) {
      throw new IllegalArgumentException("board = " + name + ": one made for the bench");
    }
    return board;
  }

  /** The first that is made for this way of lighting. */
  public static BoardSettings standard(Ignition ignition) {
    return ALL.stream()
        .filter(b -> b.ignition() == ignition)
        .findFirst()
        .or(() -> ALL.stream().filter(b -> b.ignition().fits(ignition)).findFirst())
        .orElseThrow();
  }

  /** Times in seconds but for trial and proving. */
  private static Times furnace(
      long restart,
      long purge,
      long warmUp,
      long retryWarmUp,
      long activation,
      long trialMillis,
      long provingMillis,
      long interPurge,
      long postPurge,
      long blowerOn,
      long blowerOff) {
    return new Times(
        restart * SECOND,
        2 * SECOND,
        30 * SECOND,
        5 * MINUTE,
        purge * SECOND,
        warmUp * SECOND,
        retryWarmUp * SECOND,
        activation * SECOND,
        trialMillis,
        provingMillis,
        interPurge * SECOND,
        postPurge * SECOND,
        blowerOn * SECOND,
        blowerOff * SECOND);
  }

  private static Times spark(
      long purge,
      long activation,
      long trialMillis,
      long provingMillis,
      long interPurge,
      long postPurge,
      long blowerOn,
      long blowerOff) {
    return furnace(
        0,
        purge,
        0,
        0,
        activation,
        trialMillis,
        provingMillis,
        interPurge,
        postPurge,
        blowerOn,
        blowerOff);
  }

  /** No inducer: the flue draws by itself. */
  private static Times pilot(long trialMillis, long interPurge) {
    return new Times(
        0,
        600,
        0,
        MINUTE,
        0,
        0,
        0,
        trialMillis,
        trialMillis,
        1000,
        interPurge * SECOND,
        0,
        30 * SECOND,
        120 * SECOND);
  }

  private static Counting counting(
      int trials, int losses, LossCount lossCounts, long lockoutMillis, @Nullable Long callReset) {
    return new Counting(
        trials,
        losses,
        lossCounts,
        10 * SECOND,
        lockoutMillis,
        callReset,
        5 * SECOND,
        5 * SECOND,
        null);
  }
}
