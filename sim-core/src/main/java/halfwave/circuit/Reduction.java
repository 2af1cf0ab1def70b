package halfwave.circuit;

import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;

/**
 * A circuit reduced, once, to its ports and its decay modes. Everything linear is in here.
 *
 * <p>With y the modes, a the port unknowns (currents i, then free potentials) and u the source:
 *
 * <pre>
 * y_m′ = −λ_m·y_m + Σ_k drive[m][k]·i_k          (the source's own part is a phasor, kept apart)
 * any voltage or current = a {@link Signal} of y, a and u
 * </pre>
 */
final class Reduction {

  final Circuit circuit;
  final Topology topology;
  final int modes;
  final int ports;
  final double omegaRadiansPerSecond;
  final double sourcePeakVolts;
  final double[] decayPerSecond;
  final double[][] drive;

  /** Voltage across each port. */
  final Signal[] portVoltage;

  private final Signal[] potential = new Signal[Topology.POINTS];

  Reduction(Circuit circuit, Topology topology) {
    this.circuit = circuit;
    this.topology = topology;
    omegaRadiansPerSecond = 2 * StrictMath.PI * circuit.sourceHertz();
    sourcePeakVolts = Math.sqrt(2) * circuit.openCircuitRmsVolts();
    ports = topology.ports.size();
    modes = topology.states;
    int source = modes;
    int columns = modes + 1 + ports + topology.free;

    double[][] voltage = nodeVoltages(columns);
    double[][] capacitance = new double[modes][modes];
    double[] sourceCharge = new double[modes];
    double[][] conductance = new double[modes][columns];
    assembleStates(voltage, capacitance, sourceCharge, conductance);

    double[][] square = new double[modes][modes];
    for (int j = 0; j < modes; j++) {
      System.arraycopy(conductance[j], 0, square[j], 0, modes);
    }
    SymmetricModes decomposition = new SymmetricModes(capacitance, square);
    decayPerSecond = decomposition.decayPerSecond;
    double[][] w = decomposition.stateFromMode;
    drive = new double[modes][ports];
    double[] sine = new double[modes];
    double[] cosine = new double[modes];
    for (int m = 0; m < modes; m++) {
      double s = 0;
      double sPrime = 0;
      for (int j = 0; j < modes; j++) {
        s -= w[j][m] * conductance[j][source];
        sPrime -= w[j][m] * sourceCharge[j];
        for (int k = 0; k < ports; k++) {
          drive[m][k] -= w[j][m] * conductance[j][source + 1 + k];
        }
      }
      double lambda = decayPerSecond[m];
      double omega = omegaRadiansPerSecond;
      sine[m] = (lambda * s + omega * omega * sPrime) / (omega * omega + lambda * lambda);
      cosine[m] = omega * (lambda * sPrime - s) / (omega * omega + lambda * lambda);
    }
    for (int n = 0; n < Topology.POINTS; n++) {
      potential[n] = signal(voltage[topology.merged.root(n)], w, sine, cosine);
    }
    portVoltage = new Signal[ports];
    for (int k = 0; k < ports; k++) {
      Conductor c = topology.ports.get(k);
      portVoltage[k] = voltage(c.from(), c.to());
    }
  }

  private Signal signal(double[] columns, double[][] w, double[] sine, double[] cosine) {
    double[] perMode = new double[modes];
    double s = columns[modes];
    double c = 0;
    for (int m = 0; m < modes; m++) {
      for (int j = 0; j < modes; j++) {
        perMode[m] += columns[j] * w[j][m];
      }
      s += perMode[m] * sine[m];
      c += perMode[m] * cosine[m];
    }
    double[] perPort = new double[ports + topology.free];
    System.arraycopy(columns, modes + 1, perPort, 0, perPort.length);
    return new Signal(perMode, perPort, s, c);
  }

  /** The largest square of a mode's drive, as the scale of them all. */
  double largestDriveSquare() {
    double most = 0;
    for (double[] row : drive) {
      double square = 0;
      for (double d : row) {
        square += d * d;
      }
      most = Math.max(most, square);
    }
    return most;
  }

  Signal voltage(Point from, Point to) {
    return potential[from.ordinal()].plus(-1, potential[to.ordinal()]);
  }

  /** Voltage of every merged point as a row over the columns: states, source, ports, potentials. */
  private double[][] nodeVoltages(int columns) {
    int n = Topology.POINTS;
    double[][] voltage = new double[n][columns];
    int[] unknown = new int[n];
    int count = 0;
    for (int k = 0; k < n; k++) {
      unknown[k] = -1;
      if (topology.merged.root(k) != k) {
        continue;
      }
      System.arraycopy(topology.offset[k], 0, voltage[k], 0, modes);
      voltage[k][modes] = topology.onSource[k];
      int root = topology.componentRoot[k];
      if (root == Topology.KNOWN) {
        continue;
      }
      if (topology.pinned[root]) {
        if (topology.freeIndex[root] >= 0) {
          voltage[k][modes + 1 + ports + topology.freeIndex[root]] = 1;
        }
      } else {
        unknown[k] = unknown[root] >= 0 ? unknown[root] : count++;
      }
    }
    double[][] z = solveUnknown(unknown, count, voltage, columns);
    for (int k = 0; k < n; k++) {
      if (unknown[k] >= 0) {
        for (int c = 0; c < columns; c++) {
          voltage[k][c] += z[unknown[k]][c];
        }
      }
    }
    return voltage;
  }

  /**
   * Solves the conductance network for the unknown component potentials. The elimination never
   * subtracts (Grassmann, Taksar and Heyman, Oper. Res. 33 (1985) 1107; from memory): a milliohm
   * beside a gigohm costs no digits.
   */
  private double[][] solveUnknown(int[] unknown, int count, double[][] known, int columns) {
    double[][] between = new double[count][count];
    double[] toKnown = new double[count];
    double[][] right = new double[count][columns];
    for (Element e : circuit.elements()) {
      if (e instanceof Resistor r && conducts(r)) {
        double g = 1 / r.resistanceOhms();
        int a = topology.node(r.from());
        int b = topology.node(r.to());
        int ua = unknown[a];
        int ub = unknown[b];
        if (ua >= 0) {
          couple(right[ua], g, known[b], known[a]);
        }
        if (ub >= 0) {
          couple(right[ub], g, known[a], known[b]);
        }
        if (ua >= 0 && ub >= 0) {
          if (ua != ub) {
            between[ua][ub] += g;
            between[ub][ua] += g;
          }
        } else if (ua >= 0) {
          toKnown[ua] += g;
        } else if (ub >= 0) {
          toKnown[ub] += g;
        }
      }
    }
    for (int k = 0; k < ports; k++) {
      Conductor c = topology.ports.get(k);
      int ua = unknown[topology.node(c.from())];
      int ub = unknown[topology.node(c.to())];
      if (ua >= 0) {
        right[ua][modes + 1 + k] -= 1;
      }
      if (ub >= 0) {
        right[ub][modes + 1 + k] += 1;
      }
    }
    return eliminate(between, toKnown, right);
  }

  private static void couple(double[] right, double g, double[] plus, double[] minus) {
    for (int c = 0; c < right.length; c++) {
      right[c] += g * (plus[c] - minus[c]);
    }
  }

  private static double[][] eliminate(double[][] between, double[] toKnown, double[][] right) {
    int n = toKnown.length;
    double[] total = new double[n];
    for (int k = n - 1; k >= 0; k--) {
      total[k] = toKnown[k];
      for (int j = 0; j < k; j++) {
        total[k] += between[k][j];
      }
      for (int i = 0; i < k; i++) {
        double f = between[i][k] / total[k];
        if (f != 0) {
          toKnown[i] += f * toKnown[k];
          for (int j = 0; j < k; j++) {
            if (j != i) {
              between[i][j] += f * between[k][j];
            }
          }
          for (int c = 0; c < right[i].length; c++) {
            right[i][c] += f * right[k][c];
          }
        }
      }
    }
    for (int k = 0; k < n; k++) {
      for (int c = 0; c < right[k].length; c++) {
        double sum = right[k][c];
        for (int j = 0; j < k; j++) {
          sum += between[k][j] * right[j][c];
        }
        right[k][c] = sum / total[k];
      }
    }
    return right;
  }

  private void assembleStates(
      double[][] voltage, double[][] capacitance, double[] sourceCharge, double[][] conductance) {
    for (Element e : circuit.elements()) {
      int a = topology.node(e.from());
      int b = topology.node(e.to());
      for (int j = 0; j < modes; j++) {
        double weight = topology.offset[a][j] - topology.offset[b][j];
        if (weight == 0 || a == b) {
          continue;
        }
        if (e instanceof Capacitor c) {
          for (int l = 0; l < modes; l++) {
            capacitance[j][l] +=
                weight * c.capacitanceFarads() * (topology.offset[a][l] - topology.offset[b][l]);
          }
          sourceCharge[j] +=
              weight * c.capacitanceFarads() * (topology.onSource[a] - topology.onSource[b]);
        } else if (e instanceof Resistor r && conducts(r)) {
          couple(conductance[j], weight / r.resistanceOhms(), voltage[a], voltage[b]);
        } else if (e instanceof Conductor c) {
          int k = topology.ports.indexOf(c);
          if (k >= 0) {
            conductance[j][modes + 1 + k] += weight;
          }
        }
      }
    }
  }

  private static boolean conducts(Resistor r) {
    return r.resistanceOhms() > 0 && r.resistanceOhms() < Double.POSITIVE_INFINITY;
  }
}
