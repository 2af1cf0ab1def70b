package halfwave.circuit;

import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;
import halfwave.quantity.Guard;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The whole sense circuit with the flame as one lumped {@link ConductionLaw}: what a file for the
 * command {@code circuit} describes.
 *
 * <pre>
 * source → resistance → [coupling] → terminal ; [return to common] ; leakage and cable to chassis ;
 * lead → rod film → flame → burner film → chassis → ground → common
 * </pre>
 *
 * @param source what stands in the board
 * @param lead the sense lead
 * @param rodFilm film on the rod, or null
 * @param flame the flame path, or null for none
 * @param burnerFilm film on the burner, or null
 * @param ground the way from chassis to common
 */
public record LumpedCircuit(
    Source source,
    Lead lead,
    @Nullable Film rodFilm,
    @Nullable ConductionLaw flame,
    @Nullable Film burnerFilm,
    Ground ground) {

  /**
   * The source in the board.
   *
   * @param openCircuitRmsVolts open-circuit voltage (V rms)
   * @param frequencyHertz frequency (Hz)
   * @param resistanceOhms series resistance (Ω); zero or above
   * @param couplingFarads coupling capacitance (F), or null for a direct connection
   * @param returnOhms resistance from the terminal to common (Ω), or null for none
   */
  public record Source(
      double openCircuitRmsVolts,
      double frequencyHertz,
      double resistanceOhms,
      @Nullable Double couplingFarads,
      @Nullable Double returnOhms) {
    /** Checks the domain. */
    public Source {
      Guard.notNegative("openCircuitVoltsRms", openCircuitRmsVolts);
      Guard.inRange("frequencyHz", frequencyHertz, 1, 1000);
      Guard.resistance("resistanceOhms", resistanceOhms);
      if (couplingFarads != null) {
        Guard.positive("couplingFarads", couplingFarads);
      }
      if (returnOhms != null) {
        Guard.resistance("returnOhms", returnOhms);
      }
    }
  }

  /**
   * The sense lead.
   *
   * @param resistanceOhms along the lead (Ω); infinity is a broken lead
   * @param insulationOhms to the chassis (Ω), or null for perfect
   * @param capacitanceFarads to the chassis (F), or null for none
   */
  public record Lead(
      double resistanceOhms, @Nullable Double insulationOhms, @Nullable Double capacitanceFarads) {
    /** Checks the domain. */
    public Lead {
      Guard.resistance("resistanceOhms", resistanceOhms);
      if (insulationOhms != null) {
        Guard.resistance("insulationOhms", insulationOhms);
      }
      if (capacitanceFarads != null) {
        Guard.notNegative("capacitanceFarads", capacitanceFarads);
      }
    }
  }

  /**
   * A film: a resistance and a capacitance side by side.
   *
   * @param resistanceOhms through the film (Ω)
   * @param capacitanceFarads across it (F)
   */
  public record Film(double resistanceOhms, double capacitanceFarads) {
    /** Checks the domain. */
    public Film {
      Guard.resistance("resistanceOhms", resistanceOhms);
      Guard.notNegative("capacitanceFarads", capacitanceFarads);
    }
  }

  /**
   * The way from the chassis back to the board's common.
   *
   * @param resistanceOhms ohms; infinity is a lost ground
   */
  public record Ground(double resistanceOhms) {
    /** Checks the domain. */
    public Ground {
      Guard.resistance("resistanceOhms", resistanceOhms);
    }
  }

  /**
   * The five values that describe how the circuit works.
   *
   * @param boardEndMeanAmps DC that leaves the sense terminal into lead, leakage and cable (A)
   * @param rodEndMeanAmps DC that enters the rod (A)
   * @param rodEndAlternatingRmsAmps AC that enters the rod (A rms, the mean removed)
   * @param terminalMeanVolts DC of the sense terminal against common (V)
   * @param terminalAlternatingRmsVolts AC of the sense terminal (V rms, the mean removed)
   */
  public record Readings(
      double boardEndMeanAmps,
      double rodEndMeanAmps,
      double rodEndAlternatingRmsAmps,
      double terminalMeanVolts,
      double terminalAlternatingRmsVolts) {

    /** Reads them off a steady state of a circuit with the standard parts. */
    public static Readings of(Solved solved) {
      return new Readings(
          solved.currentMeanAmps(Part.CONNECTOR),
          solved.currentMeanAmps(Part.LEAD),
          solved.currentAlternatingRmsAmps(Part.LEAD),
          solved.voltageMeanVolts(Point.TERMINAL, Point.COMMON),
          solved.voltageAlternatingRmsVolts(Point.TERMINAL, Point.COMMON));
    }
  }

  /** The same as points and elements, open for meters and jumpers. */
  public Circuit circuit() {
    List<Element> all = new ArrayList<>();
    all.add(new Resistor(Part.SOURCE_RESISTANCE, Point.EMF, Point.FEED, source.resistanceOhms()));
    all.add(
        source.couplingFarads() == null
            ? new Resistor(Part.COUPLING, Point.FEED, Point.TERMINAL, 0)
            : new Capacitor(Part.COUPLING, Point.FEED, Point.TERMINAL, source.couplingFarads()));
    if (source.returnOhms() != null) {
      all.add(new Resistor(Part.RETURN, Point.TERMINAL, Point.COMMON, source.returnOhms()));
    }
    all.add(new Resistor(Part.CONNECTOR, Point.TERMINAL, Point.LEAD, 0));
    if (lead.insulationOhms() != null) {
      all.add(new Resistor(Part.INSULATION, Point.LEAD, Point.CHASSIS, lead.insulationOhms()));
    }
    if (lead.capacitanceFarads() != null) {
      all.add(new Capacitor(Part.CABLE, Point.LEAD, Point.CHASSIS, lead.capacitanceFarads()));
    }
    all.add(new Resistor(Part.LEAD, Point.LEAD, Point.ROD, lead.resistanceOhms()));
    addFilm(all, rodFilm, Part.ROD_FILM, Part.ROD_FILM_CAPACITANCE, Point.ROD, Point.ROD_SURFACE);
    if (flame != null) {
      all.add(new Conductor(Part.FLAME, Point.ROD_SURFACE, Point.BURNER_SURFACE, flame));
    }
    addFilm(
        all,
        burnerFilm,
        Part.BURNER_FILM,
        Part.BURNER_FILM_CAPACITANCE,
        Point.BURNER_SURFACE,
        Point.CHASSIS);
    all.add(new Resistor(Part.GROUND, Point.CHASSIS, Point.COMMON, ground.resistanceOhms()));
    return new Circuit(source.openCircuitRmsVolts(), source.frequencyHertz(), all);
  }

  private static void addFilm(
      List<Element> all, @Nullable Film film, Part part, Part capacitance, Point from, Point to) {
    all.add(new Resistor(part, from, to, film == null ? 0 : film.resistanceOhms()));
    if (film != null && film.capacitanceFarads() > 0) {
      all.add(new Capacitor(capacitance, from, to, film.capacitanceFarads()));
    }
  }
}
