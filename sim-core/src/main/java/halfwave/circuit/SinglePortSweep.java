package halfwave.circuit;

import org.jspecify.annotations.Nullable;

/** The usual case: one flame path, its scalar equation solved by the law itself. */
final class SinglePortSweep extends Sweep {

  private final ConductionLaw law;
  private final double[] sourcePart;

  /** Steps near enough to zero for the current to bend. */
  private final boolean[] bentAt;

  SinglePortSweep(Reduction reduction, Grid grid) {
    super(reduction, grid);
    law = reduction.topology.ports.get(0).law();
    bentAt = new boolean[grid.samples];
    sourcePart = grid.sourcePart(reduction.portVoltage[0], reduction.sourcePeakVolts);
  }

  @Override
  @Nullable Part run(double[] start) {
    int modes = reduction.modes;
    double[] gain = reduction.portVoltage[0].perMode();
    double ohms = -reduction.portVoltage[0].perPort()[0];
    double[] keep = grid.keep;
    double[] early = new double[modes];
    double[] late = new double[modes];
    double stepOhms = ohms;
    double kick = 0;
    for (int m = 0; m < modes; m++) {
      early[m] = grid.early[m] * reduction.drive[m][0];
      late[m] = grid.late[m] * reduction.drive[m][0];
      stepOhms -= gain[m] * late[m];
      kick += gain[m] * (early[m] + late[m]);
    }
    double[] y = start.clone();
    double[][] s = monodromy;
    double[] di = new double[modes];
    double[] dOpen = new double[modes];
    double open = sourcePart[0];
    for (int m = 0; m < modes; m++) {
      open += gain[m] * y[m];
      mode[m][0] = y[m];
      for (int l = 0; l < modes; l++) {
        s[m][l] = m == l ? 1 : 0;
      }
    }
    double i = law.currentInSeriesAmps(open, ohms);
    double slope = law.seriesSlopeSiemens(open, i, ohms);
    for (int m = 0; m < modes; m++) {
      di[m] = slope * gain[m];
      dOpen[m] = gain[m];
    }
    port[0][0] = i;
    extraMeanAmps = 0;
    for (int n = 1; n <= grid.samples; n++) {
      double emf = sourcePart[n == grid.samples ? 0 : n];
      for (int m = 0; m < modes; m++) {
        y[m] = keep[m] * y[m] + early[m] * i;
        emf += gain[m] * y[m];
      }
      double i0 = i;
      double open0 = open;
      i = law.currentInSeriesAmps(emf, stepOhms);
      slope = law.seriesSlopeSiemens(emf, i, stepOhms);
      open = emf + (ohms - stepOhms) * i;
      if (!frozen) {
        bentAt[n - 1] = Math.min(Math.abs(open0), Math.abs(open)) < 3 * Math.abs(open - open0);
      }
      boolean bent = bentAt[n - 1];
      Bend bend = bent ? bend(open0, i0, open, i, ohms) : Bend.NONE;
      extraMeanAmps += bend.amps / grid.samples;
      double firstSlope = slope;
      if (bent) {
        // solved once more with the bend, so that current and modes fit at every sample alike
        emf += kick * bend.amps;
        i = law.currentInSeriesAmps(emf, stepOhms);
        slope = law.seriesSlopeSiemens(emf, i, stepOhms);
        open = emf + (ohms - stepOhms) * i;
      }
      for (int m = 0; m < modes; m++) {
        y[m] += late[m] * i + (early[m] + late[m]) * bend.amps;
        mode[m][n] = y[m];
      }
      for (int l = 0; l < modes; l++) {
        double demf = 0;
        for (int m = 0; m < modes; m++) {
          s[m][l] = keep[m] * s[m][l] + early[m] * di[l];
          demf += gain[m] * s[m][l];
        }
        double dBend = 0;
        if (bent) {
          double di1 = firstSlope * demf;
          double dOpen1 = demf + (ohms - stepOhms) * di1;
          dBend =
              bend.perOpen0 * dOpen[l] + bend.perOpen1 * dOpen1 - bend.perLine * (di[l] + di1) / 2;
          demf += kick * dBend;
        }
        di[l] = slope * demf;
        dOpen[l] = demf + (ohms - stepOhms) * di[l];
        for (int m = 0; m < modes; m++) {
          s[m][l] += late[m] * di[l] + (early[m] + late[m]) * dBend;
        }
      }
      if (n < grid.samples) {
        port[0][n] = i;
      }
    }
    return null;
  }

  /** Mean current above the straight line between two samples, and its slopes. */
  private static final class Bend {
    static final Bend NONE = new Bend(0, 0, 0, 0);

    final double amps;
    final double perOpen0;
    final double perOpen1;
    final double perLine;

    Bend(double amps, double perOpen0, double perOpen1, double perLine) {
      this.amps = amps;
      this.perOpen0 = perOpen0;
      this.perOpen1 = perOpen1;
      this.perLine = perLine;
    }
  }

  /**
   * What a straight line between two samples misses of the mean current where it rises as a square
   * root. The open-circuit voltage of the port is nearly linear in time there; Simpson's rule in u
   * with emf = end·u² is exact both for a square root and for a straight line.
   */
  private Bend bend(double open0, double i0, double open1, double i1, double ohms) {
    double span = open1 - open0;
    if (span == 0) {
      return Bend.NONE;
    }
    double mean;
    if (open0 * open1 < 0) {
      mean = (rise(0, 0, open1, i1, ohms) - rise(0, 0, open0, i0, ohms)) / span;
    } else if (Math.abs(open0) < Math.abs(open1)) {
      mean = rise(open0, i0, open1, i1, ohms) / span;
    } else {
      mean = -rise(open1, i1, open0, i0, ohms) / span;
    }
    return new Bend(mean - 0.5 * (i0 + i1), (mean - i0) / span, (i1 - mean) / span, 1);
  }

  /** Integral of the current over the voltage from near zero to far of it. */
  private double rise(double near, double iNear, double far, double iFar, double ohms) {
    double u = Math.sqrt(near / far);
    double middle = 0.5 * (1 + u);
    double i = law.currentInSeriesAmps(far * middle * middle, ohms);
    return far * (1 - u) * (u * iNear + 4 * middle * i + iFar) / 3;
  }
}
