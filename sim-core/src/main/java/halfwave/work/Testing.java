package halfwave.work;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;

/** What simple tests find. Bands: as cited, else common practice, no source. */
final class Testing {

  /** A meter shows no more (Ω) [practice]. */
  private static final double OPEN_OHMS = 5e7;

  /** More than this beyond the lead as built is too much (Ω). */
  private static final double LEAD_SLACK_OHMS = 10;

  /** Burner nearest the rod to neutral: below this [seen: furnace service manuals]. */
  private static final double BOND_OHMS = 2;

  /** Bands of insulation (Ω): at least 20, 50 after long service [seen: application manuals]. */
  private static final double INSULATED_OHMS = 50e6;

  private static final double WORN_OHMS = 20e6;
  private static final double FAILED_OHMS = 1e6;

  /** Gas pressure within a fifth of what was set up is taken for right (1). */
  private static final double LOW_RATIO = 0.8;

  private static final double HIGH_RATIO = 1.2;

  private Testing() {}

  static Finding lead(Scene scene) {
    Condition c = scene.now().condition();
    double extra = c.connectorOhms() + c.leadExtraOhms();
    // without a rod there is no far end
    if (extra >= OPEN_OHMS || Aspect.broken(c)) {
      return Finding.LEAD_OPEN;
    }
    return extra > LEAD_SLACK_OHMS ? Finding.LEAD_HIGH : Finding.LEAD_THROUGH;
  }

  static Finding bond(Scene scene) {
    Bench now = scene.now();
    double ohms = now.design().groundOhms() + now.condition().groundExtraOhms();
    if (ohms >= OPEN_OHMS) {
      return Finding.BOND_OPEN;
    }
    return ohms >= BOND_OHMS ? Finding.BOND_HIGH : Finding.BOND_GOOD;
  }

  /** Everything between lead, rod and chassis conducts side by side, a contact included. */
  static Finding insulation(Scene scene) {
    Bench now = scene.now();
    Condition c = now.condition();
    Double built = now.design().lead().insulationOhms();
    double siemens =
        (built == null ? 0 : 1 / built)
            + 1 / c.leakageOhms()
            + 1 / c.jumperOhms()
            + 1 / c.depositOhms();
    double ohms = now.rodClearanceMeters() == 0 ? 0 : 1 / siemens;
    if (ohms < FAILED_OHMS) {
      return Finding.INSULATION_FAILED;
    }
    if (ohms < WORN_OHMS) {
      return Finding.INSULATION_POOR;
    }
    return ohms < INSULATED_OHMS ? Finding.INSULATION_WORN : Finding.INSULATION_GOOD;
  }

  /** At the furnace's line connections: the door switch comes after them. */
  static Finding polarity(Scene scene) {
    if (!scene.supply()) {
      return Finding.POLARITY_DEAD;
    }
    return has(scene, Disorder.LINE_REVERSED) ? Finding.POLARITY_SWAPPED : Finding.POLARITY_RIGHT;
  }

  static Finding manifold(Scene scene) {
    ApplianceCondition a = scene.now().condition().appliance();
    boolean driven =
        scene.outputs().gas()
            && !a.has(Disorder.VALVE_DRIVER_DEAD)
            && !a.has(Disorder.VALVE_STUCK_SHUT);
    boolean open = driven || a.has(Disorder.VALVE_STUCK_OPEN);
    double ratio = scene.now().condition().manifoldRatio();
    if (!open || a.has(Disorder.GAS_SHUT) || ratio == 0) {
      return Finding.PRESSURE_NONE;
    }
    if (ratio < LOW_RATIO) {
      return Finding.PRESSURE_LOW;
    }
    return ratio > HIGH_RATIO ? Finding.PRESSURE_HIGH : Finding.PRESSURE_RIGHT;
  }

  static Finding valve(Scene scene) {
    if (!scene.outputs().gas()) {
      return Finding.VALVE_NOT_CALLED;
    }
    return has(scene, Disorder.VALVE_DRIVER_DEAD) ? Finding.VALVE_UNPOWERED : Finding.VALVE_POWERED;
  }

  static Finding igniter(Scene scene) {
    if (has(scene, Disorder.IGNITER_BROKEN)) {
      return Finding.IGNITER_CRACKED;
    }
    boolean on = scene.outputs().igniter() || scene.outputs().spark();
    return on ? Finding.IGNITER_WORKS : Finding.IGNITER_DARK;
  }

  static Finding pressureSwitch(Scene scene) {
    boolean pressed = scene.draftProved() || has(scene, Disorder.PRESSURE_SWITCH_CLOSED);
    return pressed && !has(scene, Disorder.PRESSURE_SWITCH_OPEN)
        ? Finding.PRESSURE_SWITCH_CLOSED
        : Finding.PRESSURE_SWITCH_OPEN;
  }

  static Finding limit(Scene scene) {
    return scene.overheated() || has(scene, Disorder.LIMIT_OPEN)
        ? Finding.LIMIT_OPEN
        : Finding.LIMIT_CLOSED;
  }

  static Finding inducer(Scene scene) {
    return scene.outputs().inducer() && !has(scene, Disorder.INDUCER_DEAD)
        ? Finding.INDUCER_TURNS
        : Finding.INDUCER_STILL;
  }

  static Finding blower(Scene scene) {
    return scene.outputs().blower() && !has(scene, Disorder.BLOWER_DEAD)
        ? Finding.BLOWER_TURNS
        : Finding.BLOWER_STILL;
  }

  private static boolean has(Scene scene, Disorder disorder) {
    return scene.now().condition().appliance().has(disorder);
  }
}
