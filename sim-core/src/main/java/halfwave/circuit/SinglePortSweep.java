package halfwave.circuit;

import org.jspecify.annotations.Nullable;

/** The usual case: one flame path, its scalar equation solved by the law itself. */
final class SinglePortSweep extends Sweep {

  private final ConductionLaw law;
  private final double[] sourcePart;

  SinglePortSweep(Reduction reduction, Grid grid) {
    super(reduction, grid);
    law = reduction.topology.ports.get(0).law();
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
    for (int m = 0; m < modes; m++) {
      early[m] = grid.early[m] * reduction.drive[m][0];
      late[m] = grid.late[m] * reduction.drive[m][0];
      stepOhms -= gain[m] * late[m];
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
      boolean bent = Math.min(Math.abs(open0), Math.abs(open)) < 3 * Math.abs(open - open0);
      Bend bend = bent ? bend(open0, i0, open, i, ohms) : Bend.NONE;
      extraMeanAmps += bend.amps / grid.samples;
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
        double di0 = di[l];
        double dOpen0 = dOpen[l];
        di[l] = slope * demf;
        dOpen[l] = demf + (ohms - stepOhms) * di[l];
        double dBend =
            bend.perOpen0 * dOpen0 + bend.perOpen1 * dOpen[l] - bend.perLine * (di0 + di[l]) / 2;
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
   * root. The open-circuit voltage of the port is nearly linear in time there; in a step that
   * crosses zero, Simpson's rule in u with emf = end·u² is exact both for a square root and for a
   * straight line; beside it, Simpson's rule in time serves.
   */
  private Bend bend(double open0, double i0, double open1, double i1, double ohms) {
    double line = 0.5 * (i0 + i1);
    if (open0 * open1 < 0) {
      double rise1 = open1 * (2 * law.currentInSeriesAmps(open1 / 4, ohms) + i1) / 3;
      double rise0 = open0 * (2 * law.currentInSeriesAmps(open0 / 4, ohms) + i0) / 3;
      double span = open1 - open0;
      double mean = (rise1 - rise0) / span;
      return new Bend(mean - line, (mean - i0) / span, (i1 - mean) / span, 1);
    }
    double middle = 0.5 * (open0 + open1);
    double i = law.currentInSeriesAmps(middle, ohms);
    double half = law.seriesSlopeSiemens(middle, i, ohms) / 3;
    return new Bend(2 * (i - line) / 3, half, half, 2.0 / 3);
  }
}
