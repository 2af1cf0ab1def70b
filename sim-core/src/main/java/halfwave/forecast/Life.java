package halfwave.forecast;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.surface.ContaminationFilm;
import halfwave.work.Handling;
import halfwave.work.Repair;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One possible life of a rod: the bench at any time for one set of rates. */
final class Life {

  private static final double THOUSAND_HOURS_SECONDS = 3600e3;

  /** Radius lost in 1000 h (m) [memory: iron-chromium-aluminium at 1150 K]. */
  private static final double THINNED_METERS = 1e-6;

  /** Bend downwards in 1000 h (rad) [judgement]. */
  private static final double DROOPED_RADIANS = 0.1 * Math.PI / 180;

  /** Ways of cleaning that scratch. */
  private static final Set<Repair> SCRATCHING =
      EnumSet.of(
          Repair.CLEAN_ROD_WITH_STEEL_WOOL,
          Repair.CLEAN_ROD_WITH_BRASS_BRUSH,
          Repair.CLEAN_ROD_WITH_PAPER);

  private final Question question;
  private final Exposure exposure;
  private final Map<Rate, Double> rates;

  Life(Question question, Exposure exposure, Map<Rate, Double> rates) {
    this.question = question;
    this.exposure = exposure;
    this.rates = rates;
  }

  private double rate(Rate rate) {
    return rates.getOrDefault(rate, 1.0);
  }

  /**
   * The bench after a time.
   *
   * @param seconds time with flame (s)
   * @param done work on the rod so far, in order
   * @throws halfwave.quantity.RejectedValueException where the rod has come upon metal
   */
  Bench at(double seconds, List<Logged.Done> done) {
    Bench bench = question.bench();
    Coat coat = begun(bench.condition().rodCoat());
    double reached = exposure.ratio(bench);
    double since = 0;
    double rodSince = 0;
    double faster = 1;
    for (Logged.Done work : done) {
      Repair repair = work.repair();
      bench = repair.on(bench);
      coat = left(repair);
      since = work.flameSeconds();
      faster = SCRATCHING.contains(repair) ? rate(Rate.SCRATCHES) : 1;
      if (repair == Repair.REPLACE_ROD) {
        rodSince = since;
        reached = exposure.ratio(bench);
      }
    }
    Coat grown = coat.thicker(grownMeters(seconds - since, reached * faster), rate(Rate.CRACKS));
    return aged(bench.with(bench.condition().withRodCoat(grown)), seconds - rodSince);
  }

  /** A film that is there keeps its kind; a new one is of the kind that was drawn. */
  private Coat begun(Coat coat) {
    Coat kind = coat.covers() ? coat : ofKind(coat.thicknessMeters());
    return question.touched()
        ? kind.thicker(rate(Rate.SKIN_OIL) * touchedMeters(), rate(Rate.CRACKS))
        : kind;
  }

  /** What fingers put on a clean rod (m). */
  private double touchedMeters() {
    Bench bench = question.bench();
    Bench clean = bench.with(bench.condition().withRodCoat(Coat.CLEAN));
    return Parameter.ROD_FILM.of(Handling.FINGERS_ON_ROD.change().on(clean));
  }

  private Coat left(Repair repair) {
    return ofKind(rate(Rate.RESIDUE) * repair.residueMeters());
  }

  private Coat ofKind(double thicknessMeters) {
    return Coat.even(thicknessMeters, Coat.CLEAN.porosityRatio() * rate(Rate.POROSITY));
  }

  private double grownMeters(double seconds, double ratio) {
    double silicon = question.siliconKilogramsPerCubicMeter() * rate(Rate.SILICON);
    return ratio
        * rate(Rate.GROWTH)
        * ContaminationFilm.grownFromAirMeters(silicon, Math.max(0, seconds));
  }

  private Bench aged(Bench bench, double seconds) {
    double age = seconds / THOUSAND_HOURS_SECONDS;
    double radius = Parameter.ROD_RADIUS.of(bench) - age * THINNED_METERS * rate(Rate.THINNING);
    Bench thinner = Parameter.ROD_RADIUS.with(bench, Math.max(Parameter.ROD_RADIUS.low(), radius));
    RodPosition p = thinner.condition().rodPosition();
    double bend = p.bendRadians() - age * DROOPED_RADIANS * rate(Rate.DROOP);
    return Parameter.ROD_BEND.with(thinner, Math.max(Parameter.ROD_BEND.low(), bend));
  }
}
