package halfwave.work;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.RodPosition;
import halfwave.bench.Trigger;
import java.util.Set;

/**
 * What eyes, hands and the customer find. Where several things are wrong, what strikes first is
 * found. All thresholds: common practice, no source.
 */
final class Seeing {

  /** A thinner film cannot be seen (m). */
  private static final double VISIBLE_METERS = 0.3e-6;

  /** A thicker one is a crust (m). */
  private static final double CRUST_METERS = 50e-6;

  /** A rod so far from its place strikes the eye (m, rad). */
  private static final double BENT_METERS = 4e-3;

  private static final double BENT_RADIANS = 0.15;
  private static final double FAR_METERS = 10e-3;

  /** From here a jumper is no contact that could be seen (Ω). */
  private static final double CONTACT_OHMS = 1e5;

  /** Blocked ports strike the eye when so many are left open (1). */
  private static final double ATTACHED_RATIO = 0.95;

  /** A ceramic that leaks less shows no crack (Ω). */
  private static final double CRACK_OHMS = 1e8;

  /** A connector that passes less is off (Ω). */
  private static final double OFF_OHMS = 1e8;

  /** A row of burners that is lit later hesitates (s). */
  private static final double SLOW_SECONDS = 0.6;

  private static final double GAP_SLACK_METERS = 2e-3;

  /** Less primary air than this makes carbon monoxide in earnest (over a clean injector). */
  private static final double STARVED_RATIO = 0.5;

  /** Gas pressure below which flames look small, above which large (over that set up). */
  private static final double SMALL_RATIO = 0.5;

  private static final double LARGE_RATIO = 1.6;

  private Seeing() {}

  static Finding flame(Scene scene) {
    if (!scene.burning()) {
      return Finding.FLAME_OUT;
    }
    Bench now = scene.now();
    if (scene.litCount() < now.design().burnerCount()
        || now.condition().attachmentRatio() < ATTACHED_RATIO) {
      return Finding.FLAME_PARTIAL;
    }
    return switch (scene.flame()) {
      case OUT, BLOWN_OFF, FLASHBACK -> Finding.FLAME_OUT;
      case LIFTED -> Finding.FLAME_LIFTING;
      case LAZY, RICH -> Finding.FLAME_LAZY;
      case LEAN -> Finding.FLAME_HARD;
      case HEALTHY -> size(now.condition().manifoldRatio());
    };
  }

  private static Finding size(double pressureRatio) {
    if (pressureRatio < SMALL_RATIO) {
      return Finding.FLAME_SMALL;
    }
    return pressureRatio > LARGE_RATIO ? Finding.FLAME_LARGE : Finding.FLAME_HEALTHY;
  }

  static Finding rod(Scene scene) {
    Condition c = scene.now().condition();
    RodPosition p = c.rodPosition();
    if (Aspect.broken(c)) {
      return Finding.ROD_OFF;
    }
    if (touches(scene.now())) {
      return Finding.ROD_TOUCHES;
    }
    if (Math.abs(p.acrossMeters()) > FAR_METERS || p.alongMeters() > FAR_METERS) {
      return Finding.ROD_FAR;
    }
    return bent(p) ? Finding.ROD_BENT : coat(c.rodCoat());
  }

  private static boolean touches(Bench now) {
    return now.rodClearanceMeters() == 0 || now.condition().jumperOhms() < CONTACT_OHMS;
  }

  private static boolean bent(RodPosition p) {
    return Math.abs(p.upMeters()) > BENT_METERS
        || Math.abs(p.turnRadians()) > BENT_RADIANS
        || Math.abs(p.tiltRadians()) > BENT_RADIANS
        || Math.abs(p.bendRadians()) > BENT_RADIANS;
  }

  private static Finding coat(Coat coat) {
    if (coat.thicknessMeters() > CRUST_METERS) {
      return Finding.ROD_FOULED;
    }
    return visible(coat) ? Finding.ROD_GLASSY : Finding.ROD_CLEAN;
  }

  static boolean visible(Coat coat) {
    return coat.thicknessMeters() > VISIBLE_METERS;
  }

  /** A crack that leaks only when it is hot is seen cold as well; damp is not seen at all. */
  static Finding insulator(Scene scene) {
    Condition c = scene.bench().under(Set.of(Trigger.HEAT)).condition();
    if (c.depositOhms() < Double.POSITIVE_INFINITY) {
      return Finding.CERAMIC_DEPOSIT;
    }
    boolean cracked = c.leakageOhms() < CRACK_OHMS && !Aspect.chafed(c.leakageOhms());
    return cracked ? Finding.CERAMIC_CRACKED : Finding.CERAMIC_SOUND;
  }

  static Finding connector(Scene scene) {
    double still = scene.now().condition().connectorOhms();
    if (still >= OFF_OHMS) {
      return Finding.CONNECTOR_OFF;
    }
    double tugged = scene.nowWith(Trigger.VIBRATION).condition().connectorOhms();
    return tugged > still ? Finding.CONNECTOR_LOOSE : Finding.CONNECTOR_FIRM;
  }

  static Finding gap(Scene scene) {
    Bench now = scene.now();
    if (touches(now)) {
      return Finding.GAP_NONE;
    }
    double more = now.rodClearanceMeters() - now.with(Condition.HEALTHY).rodClearanceMeters();
    if (more > GAP_SLACK_METERS) {
      return Finding.GAP_LARGE;
    }
    return more < -GAP_SLACK_METERS ? Finding.GAP_SMALL : Finding.GAP_RIGHT;
  }

  static Finding burnerFace(Scene scene) {
    // what the blower does to the flame is no matter of the ports
    Condition c = scene.nowWithout(Trigger.BLOWER).condition();
    if (c.attachmentRatio() < ATTACHED_RATIO) {
      return Finding.BURNER_BLOCKED;
    }
    return c.burnerScaleOhms() > 0 ? Finding.BURNER_SCALED : Finding.BURNER_CLEAN;
  }

  static Finding travel(Scene scene) {
    if (!scene.burning()) {
      return Finding.TRAVEL_NOTHING;
    }
    double seconds = scene.now().condition().appliance().carryOverSeconds();
    if (scene.bench().design().burnerCount() == 1 || seconds <= SLOW_SECONDS) {
      return Finding.TRAVEL_QUICK;
    }
    return seconds < Double.POSITIVE_INFINITY ? Finding.TRAVEL_SLOW : Finding.TRAVEL_STOPS;
  }

  static Finding whatHappens(Scene scene) {
    if (scene.burning()) {
      return Finding.SAYS_HEATS;
    }
    return switch (scene.code()) {
      case DARK -> Finding.SAYS_DEAD;
      case READY, STARTING -> Finding.SAYS_WAITS;
      case FLAME, WEAK_FLAME -> Finding.SAYS_HEATS;
      case FLAME_LOST -> Finding.SAYS_GOES_OUT;
      case NO_IGNITION, SOFT_LOCKOUT -> Finding.SAYS_NEVER_STAYS;
      case FALSE_FLAME, LIMIT_OPEN -> Finding.SAYS_FANS_RUN;
      case SENSE_SHORTED, PRESSURE_OPEN, PRESSURE_CLOSED, LINE_REVERSED, HARD_LOCKOUT ->
          Finding.SAYS_NO_START;
    };
  }

  /** A class and no number: the model computes no carbon monoxide [common practice]. */
  static Finding combustion(Scene scene) {
    if (!scene.burning()) {
      return Finding.COMBUSTION_NONE;
    }
    Condition now = scene.now().condition();
    Condition still = scene.nowWithout(Trigger.BLOWER).condition();
    boolean blowerChangesIt = now.attachmentRatio() != still.attachmentRatio();
    if (blowerChangesIt || now.airRatio() < STARVED_RATIO) {
      return Finding.COMBUSTION_STOP;
    }
    // scale on the face disturbs the flame as well
    boolean sound =
        flame(scene) == Finding.FLAME_HEALTHY && burnerFace(scene) == Finding.BURNER_CLEAN;
    return sound ? Finding.COMBUSTION_FINE : Finding.COMBUSTION_WORSE;
  }
}
