package halfwave.diagnosis;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Design;
import halfwave.bench.RodPosition;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.quantity.RejectedValueException;

/**
 * How one healthy furnace differs from another of its kind. Sizes: common practice, no source.
 *
 * @param ionRatio strength of the ion sources over the bench's (1)
 * @param voltsRatio sense voltage over the bench's (1): the line is never quite what it should be
 * @param sourceOhmsRatio source resistance over the bench's (1)
 * @param gasRatio gas pressure over the bench's (1)
 * @param airRatio primary air over the bench's (1)
 * @param attachmentRatio ports that hold flame over the bench's (1)
 * @param insulationRatio healthy insulation over the bench's (1): it ages
 * @param acrossMeters the rod beside where it was fitted (m)
 * @param upMeters the rod above it (m)
 */
public record Variation(
    double ionRatio,
    double voltsRatio,
    double sourceOhmsRatio,
    double gasRatio,
    double airRatio,
    double attachmentRatio,
    double insulationRatio,
    double acrossMeters,
    double upMeters) {

  /** The bench itself. */
  public static final Variation NONE = new Variation(1, 1, 1, 1, 1, 1, 1, 0, 0);

  /** The bench as another of its kind. Where its rod has no room to move, it stays. */
  public Bench on(Bench bench) {
    Bench other = bench.with(design(bench.design())).with(condition(bench.condition()));
    try {
      return other.with(other.condition().withRodPosition(shifted(bench.condition())));
    } catch (RejectedValueException e) {
      return other;
    }
  }

  private RodPosition shifted(Condition c) {
    RodPosition p = c.rodPosition();
    return p.withAcross(p.acrossMeters() + acrossMeters).withUp(p.upMeters() + upMeters);
  }

  private Design design(Design design) {
    Source s = design.source();
    Lead lead = design.lead();
    Double insulation = lead.insulationOhms();
    return design
        .withFlame(design.flame().withIonMultiplier(design.flame().ionMultiplierRatio() * ionRatio))
        .withSource(
            new Source(
                s.openCircuitRmsVolts() * voltsRatio,
                s.frequencyHertz(),
                s.resistanceOhms() * sourceOhmsRatio,
                s.couplingFarads(),
                s.returnOhms()))
        .withLead(
            new Lead(
                lead.resistanceOhms(),
                insulation == null ? null : insulation * insulationRatio,
                lead.capacitanceFarads()));
  }

  private Condition condition(Condition c) {
    return c.withManifold(c.manifoldRatio() * gasRatio)
        .withAir(c.airRatio() * airRatio)
        .withAttachment(c.attachmentRatio() * attachmentRatio);
  }
}
