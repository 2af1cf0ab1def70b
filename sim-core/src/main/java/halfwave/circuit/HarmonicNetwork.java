package halfwave.circuit;

import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Resistor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.complex.Complex;

/**
 * All that is linear in a circuit, at one harmonic of its source. Each conductor is replaced by a
 * resistance and an emf in series, the wave that it sends back (see {@link PortWaves}).
 *
 * <p>Voltages across every element come out to nearly the last digit, also the microvolts of an ohm
 * between potentials of hundreds of volts: the elimination never subtracts (as in {@link
 * Reduction}), and potentials are kept as a sum of two numbers and corrected by what Kirchhoff's
 * current law still lacks.
 */
final class HarmonicNetwork {

  /** One brings the sum of powers of random circuits from 7e-9 of the source's to 7e-16. */
  private static final int CORRECTIONS = 2;

  /** An element that can carry current, between two nodes. */
  record Branch(Element element, int from, int to, Complex siemens) {}

  private static final int COMMON = 0;
  private static final int SOURCE = 1;
  private static final int FIRST_UNKNOWN = 2;

  final List<Branch> branches = new ArrayList<>();

  /** The branch of each port. */
  final int[] port;

  private final int unknowns;
  private final Complex[][] between;
  private final Complex[] total;

  HarmonicNetwork(Reduction reduction, double[] portOhms, int harmonic) {
    Topology topology = reduction.topology;
    port = new int[portOhms.length];
    int[] node = new int[Topology.POINTS];
    Arrays.fill(node, -1);
    node[topology.node(Point.COMMON)] = COMMON;
    node[topology.node(Point.EMF)] = SOURCE;
    int nodes = FIRST_UNKNOWN;
    double omega = harmonic * reduction.omegaRadiansPerSecond;
    for (Element e : reduction.circuit.elements()) {
      int k = topology.ports.indexOf(e);
      Complex siemens = k < 0 ? siemens(e, omega) : new Complex(1 / portOhms[k]);
      if (topology.shorted(e) || siemens.equals(Complex.ZERO)) {
        continue;
      }
      for (Point point : List.of(e.from(), e.to())) {
        if (node[topology.node(point)] < 0) {
          node[topology.node(point)] = nodes++;
        }
      }
      if (k >= 0) {
        port[k] = branches.size();
      }
      branches.add(
          new Branch(e, node[topology.node(e.from())], node[topology.node(e.to())], siemens));
    }
    unknowns = nodes - FIRST_UNKNOWN;
    between = new Complex[unknowns][unknowns];
    total = new Complex[unknowns];
    eliminate();
  }

  private static Complex siemens(Element e, double omega) {
    if (e instanceof Resistor r && r.resistanceOhms() > 0) {
      return new Complex(1 / r.resistanceOhms());
    }
    return e instanceof Capacitor c ? new Complex(0, omega * c.capacitanceFarads()) : Complex.ZERO;
  }

  /** Grassmann, Taksar and Heyman's elimination: row sums are added up anew, never subtracted. */
  private void eliminate() {
    Complex[] toKnown = zeros(unknowns);
    for (Complex[] row : between) {
      Arrays.fill(row, Complex.ZERO);
    }
    for (Branch branch : branches) {
      int a = branch.from - FIRST_UNKNOWN;
      int b = branch.to - FIRST_UNKNOWN;
      if (a >= 0 && b >= 0) {
        between[a][b] = between[b][a] = between[a][b].add(branch.siemens);
      } else if (Math.max(a, b) >= 0) {
        toKnown[Math.max(a, b)] = toKnown[Math.max(a, b)].add(branch.siemens);
      }
    }
    for (int k = unknowns - 1; k >= 0; k--) {
      total[k] = toKnown[k];
      for (int j = 0; j < k; j++) {
        total[k] = total[k].add(between[k][j]);
      }
      for (int i = 0; i < k; i++) {
        if (!between[i][k].equals(Complex.ZERO)) {
          Complex share = between[i][k].divide(total[k]);
          toKnown[i] = toKnown[i].add(share.multiply(toKnown[k]));
          for (int j = 0; j < i; j++) {
            between[i][j] = between[j][i] = between[i][j].add(share.multiply(between[k][j]));
          }
        }
      }
    }
  }

  /**
   * Voltage across every branch.
   *
   * @param source the source's voltage at this harmonic
   * @param emf the emf in series with each port's resistance
   */
  Complex[] voltages(Complex source, Complex[] emf) {
    Complex[] high = zeros(FIRST_UNKNOWN + unknowns);
    Complex[] low = zeros(FIRST_UNKNOWN + unknowns);
    high[SOURCE] = source;
    Complex[] voltage = differences(high, low);
    for (int n = 0; n <= CORRECTIONS; n++) {
      Complex[] step = solve(lacking(voltage, emf));
      for (int k = 0; k < unknowns; k++) {
        int node = FIRST_UNKNOWN + k;
        if (n == 0) {
          high[node] = step[k];
        } else {
          low[node] = low[node].add(step[k]);
        }
      }
      voltage = differences(high, low);
    }
    return voltage;
  }

  /** Current through each branch for the voltages across them. */
  Complex[] currents(Complex[] voltage, Complex[] emf) {
    Complex[] current = new Complex[voltage.length];
    for (int k = 0; k < current.length; k++) {
      current[k] = branches.get(k).siemens.multiply(voltage[k]);
    }
    for (int k = 0; k < port.length; k++) {
      Complex across = voltage[port[k]].subtract(emf[k]);
      current[port[k]] = branches.get(port[k]).siemens.multiply(across);
    }
    return current;
  }

  /** Current that leaves the source, of the currents through the branches. */
  Complex outOfSource(Complex[] current) {
    return sumOut(current)[SOURCE];
  }

  private Complex[] lacking(Complex[] voltage, Complex[] emf) {
    Complex[] out = sumOut(currents(voltage, emf));
    Complex[] lacking = new Complex[unknowns];
    for (int k = 0; k < unknowns; k++) {
      lacking[k] = out[FIRST_UNKNOWN + k].negate();
    }
    return lacking;
  }

  private Complex[] sumOut(Complex[] current) {
    Complex[] out = zeros(FIRST_UNKNOWN + unknowns);
    for (int k = 0; k < current.length; k++) {
      Branch branch = branches.get(k);
      out[branch.from] = out[branch.from].add(current[k]);
      out[branch.to] = out[branch.to].subtract(current[k]);
    }
    return out;
  }

  private Complex[] differences(Complex[] high, Complex[] low) {
    Complex[] voltage = new Complex[branches.size()];
    for (int k = 0; k < voltage.length; k++) {
      int from = branches.get(k).from;
      int to = branches.get(k).to;
      voltage[k] = high[from].subtract(high[to]).add(low[from].subtract(low[to]));
    }
    return voltage;
  }

  private Complex[] solve(Complex[] right) {
    for (int k = unknowns - 1; k >= 0; k--) {
      for (int i = 0; i < k; i++) {
        if (!between[i][k].equals(Complex.ZERO)) {
          right[i] = right[i].add(between[i][k].divide(total[k]).multiply(right[k]));
        }
      }
    }
    for (int k = 0; k < unknowns; k++) {
      for (int j = 0; j < k; j++) {
        right[k] = right[k].add(between[k][j].multiply(right[j]));
      }
      // nothing holds it: what no direct current reaches may have any potential
      right[k] = total[k].equals(Complex.ZERO) ? Complex.ZERO : right[k].divide(total[k]);
    }
    return right;
  }

  private static Complex[] zeros(int count) {
    Complex[] zeros = new Complex[count];
    Arrays.fill(zeros, Complex.ZERO);
    return zeros;
  }
}
