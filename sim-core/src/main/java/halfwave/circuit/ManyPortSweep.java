package halfwave.circuit;

import halfwave.circuit.Element.Conductor;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;

/**
 * Any number of ports: three electrodes in one plasma, or a piece of the circuit that hangs on the
 * flame alone. At each sample the port voltages v and the free potentials φ solve
 *
 * <pre>
 * v − Z·i − B·φ = emf,   Bᵀ·i = 0,   i = law(v)
 * </pre>
 *
 * <p>by Newton with halved steps. The equations are those of a convex minimum (every law rises), so
 * a step that is short enough always helps. The unknown of a port is not v, in which a law may rise
 * as steeply as a square root, but {@code e = v + series·i} with a resistance lent to the law.
 */
final class ManyPortSweep extends Sweep {

  private static final int MOST_ITERATIONS = 200;

  private final List<Conductor> conductors;
  private final int ports;
  private final int unknowns;
  private final double[][] sourceParts;

  /** Resistance lent to each law (Ω): about what the port sees, so that Newton sees a mild law. */
  private final double[] series;

  private static final double LEAST_SERIES_OHMS = 1e5;

  ManyPortSweep(Reduction reduction, Grid grid) {
    super(reduction, grid);
    conductors = reduction.topology.ports;
    ports = reduction.ports;
    unknowns = ports + reduction.topology.free;
    sourceParts = new double[ports][];
    series = new double[ports];
    double[][] z = impedance(true);
    for (int k = 0; k < ports; k++) {
      series[k] = Math.max(LEAST_SERIES_OHMS, -z[k][k]);
      sourceParts[k] = grid.sourcePart(reduction.portVoltage[k], reduction.sourcePeakVolts);
    }
  }

  @Override
  @Nullable Part run(double[] start) {
    int modes = reduction.modes;
    double[] y = start.clone();
    double[][] s = monodromy;
    double[][] di = new double[ports][modes];
    for (int m = 0; m < modes; m++) {
      for (int l = 0; l < modes; l++) {
        s[m][l] = m == l ? 1 : 0;
      }
    }
    double[] x = new double[unknowns];
    for (int n = 0; n <= grid.samples; n++) {
      int sample = n == grid.samples ? 0 : n;
      double[][] z = impedance(n > 0);
      double[] emf = new double[ports];
      double[][] demf = new double[ports][modes];
      if (n > 0) {
        for (int m = 0; m < modes; m++) {
          y[m] *= grid.keep[m];
          for (int l = 0; l < modes; l++) {
            s[m][l] *= grid.keep[m];
          }
          for (int k = 0; k < ports; k++) {
            double early = grid.early[m] * reduction.drive[m][k];
            y[m] += early * port[k][n - 1];
            for (int l = 0; l < modes; l++) {
              s[m][l] += early * di[k][l];
            }
          }
        }
      }
      for (int k = 0; k < ports; k++) {
        double[] gain = reduction.portVoltage[k].perMode();
        emf[k] = sourceParts[k][sample];
        for (int m = 0; m < modes; m++) {
          emf[k] += gain[m] * y[m];
          for (int l = 0; l < modes; l++) {
            demf[k][l] += gain[m] * s[m][l];
          }
        }
      }
      Part trouble = solve(x, emf, z);
      if (trouble != null) {
        troubleSeconds = sample * grid.stepSeconds;
        return trouble;
      }
      double[] i = currents(x);
      di = sensitivities(x, z, demf);
      for (int m = 0; m < modes; m++) {
        for (int k = 0; k < ports; k++) {
          double late = n > 0 ? grid.late[m] * reduction.drive[m][k] : 0;
          y[m] += late * i[k];
          for (int l = 0; l < modes; l++) {
            s[m][l] += late * di[k][l];
          }
        }
        mode[m][n] = y[m];
      }
      if (n < grid.samples) {
        for (int k = 0; k < unknowns; k++) {
          port[k][n] = k < ports ? i[k] : x[k];
        }
      }
    }
    return null;
  }

  /** v − Z·i = emf: what the port currents of this instant add to the port voltages at once. */
  private double[][] impedance(boolean afterStep) {
    double[][] z = new double[ports][unknowns];
    for (int k = 0; k < ports; k++) {
      Signal w = reduction.portVoltage[k];
      for (int l = 0; l < unknowns; l++) {
        z[k][l] = w.perPort()[l];
        for (int m = 0; afterStep && l < ports && m < reduction.modes; m++) {
          z[k][l] += w.perMode()[m] * grid.late[m] * reduction.drive[m][l];
        }
      }
    }
    return z;
  }

  private double[] currents(double[] x) {
    double[] i = new double[ports];
    for (int k = 0; k < ports; k++) {
      i[k] = conductors.get(k).law().currentInSeriesAmps(x[k], series[k]);
    }
    return i;
  }

  private double slope(int k, double[] x) {
    ConductionLaw law = conductors.get(k).law();
    return law.seriesSlopeSiemens(x[k], law.currentInSeriesAmps(x[k], series[k]), series[k]);
  }

  private double[] residual(double[] x, double[] emf, double[][] z) {
    double[] i = currents(x);
    double[] f = new double[unknowns];
    for (int k = 0; k < ports; k++) {
      f[k] = x[k] - series[k] * i[k] - emf[k];
      for (int l = 0; l < unknowns; l++) {
        f[k] -= z[k][l] * (l < ports ? i[l] : x[l]);
      }
    }
    for (int j = ports; j < unknowns; j++) {
      for (int k = 0; k < ports; k++) {
        f[j] += z[k][j] * i[k] * CONSTRAINT_OHMS;
      }
    }
    return f;
  }

  /** Weighs the current constraint (A) against the voltage equations (V). */
  private static final double CONSTRAINT_OHMS = 1e7;

  private LUDecomposition jacobian(double[] x, double[][] z) {
    double[][] j = new double[unknowns][unknowns];
    for (int k = 0; k < ports; k++) {
      double g = slope(k, x);
      for (int row = 0; row < ports; row++) {
        j[row][k] = (row == k ? 1 - series[k] * g : 0) - z[row][k] * g;
      }
      for (int col = ports; col < unknowns; col++) {
        j[k][col] = -z[k][col];
        j[col][k] = z[k][col] * g * CONSTRAINT_OHMS;
      }
    }
    return new LUDecomposition(new Array2DRowRealMatrix(j, false), 1e-300);
  }

  private @Nullable Part solve(double[] x, double[] emf, double[][] z) {
    double scale = 1e-3;
    for (double e : emf) {
      scale = Math.max(scale, Math.abs(e));
    }
    double[] f = residual(x, emf, z);
    for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      if (largest(f) <= 1e-11 * scale) {
        return null;
      }
      LUDecomposition lu = jacobian(x, z);
      if (!lu.getSolver().isNonSingular()) {
        break;
      }
      RealVector step = lu.getSolver().solve(new ArrayRealVector(f, false));
      double part = 1;
      double[] next = x;
      double[] fNext = f;
      for (int halving = 0; halving < 40; halving++) {
        next = x.clone();
        for (int k = 0; k < unknowns; k++) {
          next[k] -= part * step.getEntry(k);
        }
        fNext = residual(next, emf, z);
        if (norm(fNext) < norm(f)) {
          break;
        }
        part /= 2;
      }
      double moved = part * step.getLInfNorm();
      System.arraycopy(next, 0, x, 0, unknowns);
      f = fNext;
      if (moved <= 1e-13 * scale) {
        return null;
      }
    }
    return worst(f);
  }

  private double[][] sensitivities(double[] x, double[][] z, double[][] demf) {
    int modes = reduction.modes;
    double[][] di = new double[ports][modes];
    if (modes > 0) {
      LUDecomposition lu = jacobian(x, z);
      for (int l = 0; l < modes; l++) {
        double[] right = new double[unknowns];
        for (int k = 0; k < ports; k++) {
          right[k] = demf[k][l];
        }
        RealVector dv = lu.getSolver().solve(new ArrayRealVector(right, false));
        for (int k = 0; k < ports; k++) {
          di[k][l] = slope(k, x) * dv.getEntry(k);
        }
      }
    }
    return di;
  }

  private Part worst(double[] f) {
    int worst = 0;
    for (int k = 1; k < ports; k++) {
      if (Math.abs(f[k]) > Math.abs(f[worst])) {
        worst = k;
      }
    }
    return ports == 0 ? Part.SOURCE : conductors.get(worst).part();
  }

  private static double largest(double[] f) {
    double most = 0;
    for (double part : f) {
      most = Math.max(most, Math.abs(part));
    }
    return most;
  }

  private static double norm(double[] f) {
    double sum = 0;
    for (double part : f) {
      sum += part * part;
    }
    return sum;
  }
}
