package halfwave.forecast;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import halfwave.work.Aspect;
import halfwave.work.Repair;
import java.util.List;
import java.util.stream.Stream;

/**
 * An entry of a furnace's log.
 *
 * <pre>
 * Logged = Read | Done
 * </pre>
 */
public sealed interface Logged {

  /** Most time with flame that a log or a forecast spans: 100,000 h (s). */
  double MOST_SECONDS = 3600e5;

  /** Repairs that begin a new life of the rod's surface. */
  List<Repair> ROD_REPAIRS =
      Stream.of(Repair.values()).filter(r -> r.aspects().contains(Aspect.ROD_COAT)).toList();

  /** Time with flame since the rod was as the bench says (s). */
  double flameSeconds();

  /**
   * A reading of the flame current.
   *
   * @param flameSeconds time with flame so far (s)
   * @param amps DC in series (A); above zero, since no film turns it round
   */
  record Read(double flameSeconds, double amps) implements Logged {
    /** Smallest current that tells anything of a rod's surface (A): a step of a good meter. */
    public static final double LEAST_AMPS = 1e-8;

    /** Largest current of a flame rod (A). */
    public static final double MOST_AMPS = 200e-6;

    /** Checks the domain. */
    public Read {
      Guard.inRange("flameSeconds", flameSeconds, 0, MOST_SECONDS);
      Guard.inRange("amps", amps, LEAST_AMPS, MOST_AMPS);
    }
  }

  /**
   * Work on the rod.
   *
   * @param flameSeconds time with flame so far (s)
   * @param repair a way of cleaning, or a new rod
   */
  record Done(double flameSeconds, Repair repair) implements Logged {
    /** Checks the domain. */
    public Done {
      Guard.inRange("flameSeconds", flameSeconds, 0, MOST_SECONDS);
      if (!ROD_REPAIRS.contains(repair)) {
        throw new RejectedValueException(
            "repair", repair.id(), Allowed.CONSISTENT, Double.NaN, Double.NaN);
      }
    }
  }
}
