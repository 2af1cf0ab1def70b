package halfwave.forecast;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.Coat;
import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.bench.Stages;
import halfwave.flame.IonField;
import halfwave.work.Handling;
import halfwave.work.Repair;

/** The two rods of a forecast: the one that is in, and the new one that may replace it. */
final class Rods {

  /** A rod that has come closer to the flame still sees no more than twice as much of it. */
  private static final double MOST_RATIO = 2;

  private final Bench found;
  private final Bench renewed;
  private final double reachedRatio;

  Rods(Bench bench) {
    found = clean(bench);
    renewed = clean(Repair.REPLACE_ROD.on(bench));
    reachedRatio = computed(found);
  }

  private static Bench clean(Bench bench) {
    return bench.with(bench.condition().withRodCoat(Coat.CLEAN));
  }

  private static double computed(Bench bench) {
    IonField field = new Stages().flame(bench).field();
    double usual = BenchCircuit.lengthInFlameMeters(bench.design().rod(), field);
    double now = BenchCircuit.lengthInFlameMeters(bench.rod(), field);
    return usual == 0 ? 1 : Math.min(MOST_RATIO, now / usual);
  }

  /**
   * Share of the flame that reaches the rod where it stands, over where it was fitted: length in
   * flame over length in flame [practice, no source]. Films grow in proportion.
   */
  double reachedRatio(boolean isRenewed) {
    return isRenewed ? 1 : reachedRatio;
  }

  /** What fingers put on a clean rod (m). */
  double touchedMeters() {
    return Parameter.ROD_FILM.of(Handling.FINGERS_ON_ROD.change().on(found));
  }

  /** The bench with a clean rod. */
  Bench clean(boolean isRenewed) {
    return isRenewed ? renewed : found;
  }

  /**
   * The bench with a worn rod.
   *
   * @throws halfwave.quantity.RejectedValueException where the rod has come upon metal
   */
  Bench bench(Worn worn) {
    Bench bench = clean(worn.renewed());
    double radius = Parameter.ROD_RADIUS.of(bench) - worn.thinnedMeters();
    Bench thinner = Parameter.ROD_RADIUS.with(bench, Math.max(Parameter.ROD_RADIUS.low(), radius));
    RodPosition position = thinner.condition().rodPosition();
    double bend = position.bendRadians() - worn.droopedRadians();
    Bench drooped = Parameter.ROD_BEND.with(thinner, Math.max(Parameter.ROD_BEND.low(), bend));
    return drooped.with(drooped.condition().withRodCoat(worn.coat()));
  }
}
