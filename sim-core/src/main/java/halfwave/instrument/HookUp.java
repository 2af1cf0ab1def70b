package halfwave.instrument;

import halfwave.circuit.Point;
import halfwave.flame.ElectrodeCharacteristic;
import java.util.EnumSet;
import java.util.Set;

/**
 * Where the two leads of a meter are.
 *
 * <pre>
 * HookUp = Across | InSenseLead | WireInFlame | AcrossSupply
 * </pre>
 */
public sealed interface HookUp {

  /**
   * Points that a lead reaches. On the surface of a rod or burner a prod goes through the film to
   * the metal.
   */
  Set<Point> REACHABLE =
      Set.copyOf(
          EnumSet.of(
              Point.COMMON,
              Point.TERMINAL,
              Point.LEAD,
              Point.ROD,
              Point.ROD_SURFACE,
              Point.BURNER_SURFACE,
              Point.CHASSIS,
              Point.PROBE));

  /** The same with the leads swapped. */
  HookUp swapped();

  /**
   * Across two points of the sense circuit.
   *
   * @param red where the red lead is
   * @param black where the black lead is
   */
  record Across(Point red, Point black) implements HookUp {
    /** Checks that a lead reaches both. */
    public Across {
      reached("red", red);
      reached("black", black);
    }

    @Override
    public Across swapped() {
      return new Across(black, red);
    }
  }

  /**
   * In series in the opened sense lead. What was wrong with the lead or its joint stays in series.
   *
   * @param end where it is opened
   * @param redTowardsBoard whether the red lead is on the board's side, as it should be
   */
  record InSenseLead(LeadEnd end, boolean redTowardsBoard) implements HookUp {
    @Override
    public InSenseLead swapped() {
      return new InSenseLead(end, !redTowardsBoard);
    }
  }

  /**
   * One lead on a bare wire held in the flame.
   *
   * @param wire the wire against the plasma
   * @param other where the other lead is
   * @param redOnWire whether the red lead is on the wire
   */
  record WireInFlame(ElectrodeCharacteristic wire, Point other, boolean redOnWire)
      implements HookUp {
    /** Checks that a lead reaches the other point. */
    public WireInFlame {
      reached("other", other);
    }

    @Override
    public WireInFlame swapped() {
      return new WireInFlame(wire, other, !redOnWire);
    }
  }

  /**
   * Across two points of the supply.
   *
   * @param red where the red lead is
   * @param black where the black lead is
   */
  record AcrossSupply(SupplyPoint red, SupplyPoint black) implements HookUp {
    @Override
    public AcrossSupply swapped() {
      return new AcrossSupply(black, red);
    }
  }

  private static void reached(String lead, Point point) {
    if (!REACHABLE.contains(point)) {
      throw new IllegalArgumentException(lead + " = " + point + ": one of " + REACHABLE);
    }
  }

  /** Whether a lead is on that point of the sense circuit. */
  default boolean touches(Point point) {
    if (this instanceof Across across) {
      return across.red == point || across.black == point;
    }
    return this instanceof WireInFlame wired && wired.other == point;
  }
}
