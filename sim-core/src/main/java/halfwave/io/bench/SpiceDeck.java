package halfwave.io.bench;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element;
import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.circuit.SquareRootLaw;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A circuit as a deck that {@code ngspice -b} runs as it is, to check the solver by another one.
 *
 * <p>The run starts in the library's own steady state, because a coupling capacitor may need a
 * thousand periods to charge; a wrong steady state shows as a drift over the periods that are run.
 * The deck prints the five values of {@link halfwave.circuit.LumpedCircuit.Readings}.
 */
public final class SpiceDeck {

  private static final int PERIODS = 20;

  /** Least number of steps per period; where the flame law bends, the program takes more. */
  private static final int STEPS = 2000;

  /** Where currents are read; their elements get an ammeter, a source of zero volts. */
  private static final Set<Part> METERED = EnumSet.of(Part.CONNECTOR, Part.LEAD);

  private final Circuit circuit;
  private final Solved solved;
  private final List<String> lines = new ArrayList<>();
  private final Map<Part, Integer> count = new EnumMap<>(Part.class);
  private final Map<Part, List<String>> ammeters = new EnumMap<>(Part.class);

  /** Which points stiff voltages (the source, zero ohms) already join. */
  private final Map<Point, Point> joined = new EnumMap<>(Point.class);

  private SpiceDeck(Solved solved) {
    this.solved = solved;
    circuit = solved.circuit();
  }

  /**
   * The deck of a solved circuit.
   *
   * @param solved the circuit with its steady state
   * @return the text of the deck
   */
  public static String of(Solved solved) {
    return new SpiceDeck(solved).text();
  }

  private String text() {
    lines.add("Halfwave sense circuit");
    lines.add("* volts, amps, ohms, farads; node 0 is the board's common");
    lines.add(
        "Vsource %s 0 SIN(0 %s %s)"
            .formatted(
                node(Point.EMF),
                number(Math.sqrt(2) * circuit.openCircuitRmsVolts()),
                number(circuit.sourceHertz())));
    join(Point.COMMON, Point.EMF);
    for (Element element : circuit.elements()) {
      String name = name(element.part());
      if (element instanceof Resistor resistor) {
        add(name, resistor);
      } else if (element instanceof Capacitor capacitor) {
        add(name, capacitor);
      } else if (element instanceof Conductor conductor) {
        add(name, conductor);
      }
    }
    lines.add("* a part that floats needs some way to common; this one carries femtoamps");
    lines.add(".options rshunt=1e15 reltol=1e-5 abstol=1e-15 vntol=1e-7 chgtol=1e-18");
    addRun();
    lines.add(".end");
    return String.join("\n", lines) + "\n";
  }

  private void add(String name, Resistor resistor) {
    double ohms = resistor.resistanceOhms();
    String from = node(resistor.from());
    String to = node(resistor.to());
    if (ohms == Double.POSITIVE_INFINITY) {
      lines.add("* " + name + " is open");
      return;
    }
    if (METERED.contains(resistor.part())) {
      ammeters.computeIfAbsent(resistor.part(), part -> new ArrayList<>()).add("V" + name);
    }
    if (ohms == 0 && join(resistor.from(), resistor.to())) {
      lines.add("V%s %s %s 0".formatted(name, from, to));
      return;
    }
    // a ring of zero-volt sources has no unique current, so the one that closes it gets some ohms
    String value = ohms == 0 ? "1e-6" : number(ohms);
    if (METERED.contains(resistor.part())) {
      String behind = name + "_behind";
      lines.add("V%s %s %s 0".formatted(name, from, behind));
      from = behind;
    }
    lines.add("R%s %s %s %s".formatted(name, from, to, value));
  }

  private void add(String name, Capacitor capacitor) {
    if (capacitor.capacitanceFarads() == 0) {
      lines.add("* " + name + " has no capacitance");
      return;
    }
    lines.add(
        "C%s %s %s %s IC=%s"
            .formatted(
                name,
                node(capacitor.from()),
                node(capacitor.to()),
                number(capacitor.capacitanceFarads()),
                number(solved.voltageVolts(capacitor.from(), capacitor.to())[0])));
  }

  private void add(String name, Conductor conductor) {
    String from = node(conductor.from());
    String to = node(conductor.to());
    if (from.equals(to)) {
      return;
    }
    String volts = "v(%s,%s)".formatted(from, to);
    lines.add("B%s %s %s I = ".formatted(name, from, to) + law(conductor, volts));
  }

  private String law(Conductor conductor, String volts) {
    if (conductor.law() instanceof SquareRootLaw law) {
      // no column at all makes the slope at zero infinite; an ohm beside a megohm does no harm
      double ohms = Math.max(law.columnOhms(), 1);
      return "\n+ %s > 0 ? %s : %s"
          .formatted(
              volts,
              branch(volts, ohms, law.burnerIonAmpsPerRootVolt()),
              branch(volts, ohms, law.rodIonAmpsPerRootVolt()));
    }
    StringBuilder table = new StringBuilder("pwl(" + volts);
    for (double v : TablePoints.volts(mostVolts(conductor))) {
      table.append(",\n+ %s, %s".formatted(number(v), number(conductor.law().currentAmps(v))));
    }
    return table.append(")").toString();
  }

  private static String branch(String volts, double ohms, double ampsPerRootVolt) {
    return "2*%s/(%s + sqrt(%s + %s*abs(%s)))"
        .formatted(
            volts,
            number(ohms),
            number(ohms * ohms),
            number(4 / (ampsPerRootVolt * ampsPerRootVolt)),
            volts);
  }

  /** A charged coupling capacitor can lift the flame's voltage above the source's peak. */
  private double mostVolts(Conductor conductor) {
    double most = Math.sqrt(2) * circuit.openCircuitRmsVolts();
    for (double v : solved.voltageVolts(conductor.from(), conductor.to())) {
      most = Math.max(most, Math.abs(v));
    }
    return 1.05 * Math.max(most, 1e-3);
  }

  private void addRun() {
    double period = 1 / circuit.sourceHertz();
    double step = period / STEPS;
    String end = number(PERIODS * period);
    lines.add(".control");
    // the grid below takes the last period without its first point, so that none counts twice
    lines.add(
        "tran %s %s %s %s uic"
            .formatted(number(step), end, number((PERIODS - 1) * period + step), number(step / 2)));
    lines.add("let board = " + current(Part.CONNECTOR));
    lines.add("let rod = " + current(Part.LEAD));
    lines.add("let terminal = v(%s)".formatted(node(Point.TERMINAL)));
    lines.add("linearize board rod terminal");
    lines.add("let boardEndDcAmps = mean(board)");
    lines.add("let rodEndDcAmps = mean(rod)");
    lines.add("let rodEndAcAmpsRms = sqrt(mean((rod - mean(rod))^2))");
    lines.add("let terminalDcVolts = mean(terminal)");
    lines.add("let terminalAcVoltsRms = sqrt(mean((terminal - mean(terminal))^2))");
    lines.add("print length(board)");
    for (String reading :
        List.of(
            "boardEndDcAmps",
            "rodEndDcAmps",
            "rodEndAcAmpsRms",
            "terminalDcVolts",
            "terminalAcVoltsRms")) {
      lines.add("print " + reading);
    }
    lines.add("quit 0");
    lines.add(".endc");
  }

  private String current(Part part) {
    List<String> names = ammeters.getOrDefault(part, List.of());
    return names.isEmpty()
        ? "0*time"
        : String.join(" + ", names.stream().map(name -> "i(" + name + ")").toList());
  }

  /** Joins two points; false if they are already joined. */
  private boolean join(Point a, Point b) {
    Point rootA = root(a);
    Point rootB = root(b);
    joined.put(rootA, rootB);
    return rootA != rootB;
  }

  private Point root(Point point) {
    Point up = joined.getOrDefault(point, point);
    return up == point ? point : root(up);
  }

  private String name(Part part) {
    int number = count.merge(part, 1, Integer::sum);
    String name = part.name().toLowerCase(Locale.ROOT);
    return number == 1 ? name : name + number;
  }

  private static String node(Point point) {
    return point == Point.COMMON ? "0" : point.name().toLowerCase(Locale.ROOT);
  }

  /** Never with a letter behind it that the program would read as a unit prefix. */
  private static String number(double value) {
    return Double.toString(value);
  }
}
