package halfwave.forecast;

import halfwave.bench.Coat;
import halfwave.surface.ContaminationFilm;
import halfwave.work.Repair;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One possible life of a rod: what it is at any time for one set of rates. */
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
  private final Rods rods;
  private final Map<Rate, Double> rates;

  Life(Question question, Rods rods, Map<Rate, Double> rates) {
    this.question = question;
    this.rods = rods;
    this.rates = rates;
  }

  private double rate(Rate rate) {
    return rates.getOrDefault(rate, 1.0);
  }

  /**
   * The rod after a time.
   *
   * @param seconds time with flame (s)
   * @param done work on the rod so far, in order
   */
  Worn at(double seconds, List<Logged.Done> done) {
    Coat coat = begun(question.bench().condition().rodCoat());
    boolean renewed = false;
    double since = 0;
    double rodSince = 0;
    double faster = 1;
    for (Logged.Done work : done) {
      coat = left(work.repair());
      since = work.flameSeconds();
      faster = SCRATCHING.contains(work.repair()) ? rate(Rate.SCRATCHES) : 1;
      if (work.repair() == Repair.REPLACE_ROD) {
        renewed = true;
        rodSince = since;
      }
    }
    double grown = grownMeters(seconds - since, rods.reachedRatio(renewed) * faster);
    double age = (seconds - rodSince) / THOUSAND_HOURS_SECONDS;
    return new Worn(
        renewed,
        coat.thicker(grown, rate(Rate.CRACKS)),
        age * THINNED_METERS * rate(Rate.THINNING),
        age * DROOPED_RADIANS * rate(Rate.DROOP));
  }

  /** A film that is there keeps its kind; a new one is of the kind that was drawn. */
  private Coat begun(Coat coat) {
    Coat kind = coat.covers() ? coat : ofKind(coat.thicknessMeters());
    return question.touched()
        ? kind.thicker(rate(Rate.SKIN_OIL) * rods.touchedMeters(), rate(Rate.CRACKS))
        : kind;
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
}
