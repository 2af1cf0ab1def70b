package halfwave.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What every {@link ConductionLaw} keeps; a law's own test supplies examples of it. */
public abstract class ConductionLawContractTest {

  private static final double[] VOLTS = volts();
  private static final double[] OHMS = {0, 1, 1e3, 1e5, 2.2e6, 1e8, 1e10};

  /** Examples of the law, its corners included. */
  protected abstract List<ConductionLaw> laws();

  /**
   * Relative difference allowed between a slope and the difference quotient over 1e-4 of the
   * voltage: the quotient's own error where the law bends, and a table's kinks.
   */
  protected double slopeTolerance() {
    return 1e-3;
  }

  private static double[] volts() {
    double[] volts = new double[60];
    for (int k = 0; k < volts.length; k++) {
      volts[k] = 1e-6 * StrictMath.pow(10, 8.7 * k / (volts.length - 1));
    }
    return volts;
  }

  @Test
  public void nothingFlowsAtZeroVolts() {
    for (ConductionLaw law : laws()) {
      assertThat(law.currentAmps(0)).as("%s", law).isZero();
      assertThat(law.currentInSeriesAmps(0, 1e6)).as("%s", law).isZero();
      assertThat(law.differentialSiemens(0)).as("%s", law).isFinite().isPositive();
    }
  }

  @Test
  public void currentHasTheSignOfTheVoltageAndRisesWithIt() {
    for (ConductionLaw law : laws()) {
      for (int sign = -1; sign <= 1; sign += 2) {
        double last = 0;
        for (double volts : VOLTS) {
          double amps = sign * law.currentAmps(sign * volts);
          assertThat(amps).as("%s at %s V", law, sign * volts).isFinite().isGreaterThan(last);
          last = amps;
        }
      }
    }
  }

  /**
   * No jump: a millionth more voltage gives no more than the steepest law, a square one, allows.
   */
  @Test
  public void currentHasNoJumps() {
    for (ConductionLaw law : laws()) {
      for (int sign = -1; sign <= 1; sign += 2) {
        for (double volts : VOLTS) {
          double here = law.currentAmps(sign * volts);
          double there = law.currentAmps(sign * volts * (1 + 1e-6));
          assertThat(there).isCloseTo(here, within(3e-6 * Math.abs(here)));
        }
        // continuous at zero: even the square root falls to 1e-6 of its value at 1 V
        assertThat(Math.abs(law.currentAmps(sign * 1e-12)))
            .as("%s", law)
            .isLessThanOrEqualTo(2e-6 * Math.abs(law.currentAmps(sign)));
      }
    }
  }

  @Test
  public void slopeIsTheDerivative() {
    for (ConductionLaw law : laws()) {
      for (int sign = -1; sign <= 1; sign += 2) {
        for (double volts : VOLTS) {
          double v = sign * volts;
          double step = 1e-4 * volts;
          double quotient = (law.currentAmps(v + step) - law.currentAmps(v - step)) / (2 * step);
          assertThat(law.differentialSiemens(v))
              .as("%s at %s V", law, v)
              .isPositive()
              .isCloseTo(quotient, within(slopeTolerance() * quotient));
        }
      }
    }
  }

  @Test
  public void currentInSeriesSolvesItsEquation() {
    for (ConductionLaw law : laws()) {
      for (double ohms : OHMS) {
        for (double volts : VOLTS) {
          seriesHolds(law, volts, ohms);
          seriesHolds(law, -volts, ohms);
        }
      }
    }
  }

  /** Compared as voltages: Newton stops at 1e-12 of the source, a table's inverse at about 1e-9. */
  private static void seriesHolds(ConductionLaw law, double emf, double ohms) {
    double amps = law.currentInSeriesAmps(emf, ohms);
    double left = emf - amps * ohms;
    assertThat(amps * emf).as("%s, %s V, %s ohm", law, emf, ohms).isGreaterThanOrEqualTo(0);
    assertThat(left * emf).isGreaterThanOrEqualTo(-1e-9 * emf * emf);
    double slope = law.seriesSlopeSiemens(emf, amps, ohms);
    double residual = amps - law.currentAmps(left);
    assertThat(Math.abs(residual) / law.differentialSiemens(left))
        .as("%s, %s V, %s ohm", law, emf, ohms)
        .isLessThanOrEqualTo(1e-8 * Math.abs(emf) * (1 + ohms * law.differentialSiemens(left)));
    assertThat(slope).isPositive().isLessThanOrEqualTo(ohms == 0 ? 1e4 : (1 + 1e-9) / ohms);
  }

  @Test
  public void seriesSlopeIsTheDerivative() {
    for (ConductionLaw law : laws()) {
      for (double ohms : new double[] {1e5, 2.2e6, 1e8}) {
        for (double emf : new double[] {-170, -20, -1, 1, 20, 170}) {
          double step = 1e-4 * emf;
          double quotient =
              (law.currentInSeriesAmps(emf + step, ohms)
                      - law.currentInSeriesAmps(emf - step, ohms))
                  / (2 * step);
          double amps = law.currentInSeriesAmps(emf, ohms);
          assertThat(law.seriesSlopeSiemens(emf, amps, ohms))
              .as("%s, %s V, %s ohm", law, emf, ohms)
              .isCloseTo(quotient, within(slopeTolerance() * quotient + 1e-6 / ohms));
        }
      }
    }
  }

  /** The interface's own Newton and an override of it must agree. */
  @Test
  public void overridesAgreeWithTheDefaults() {
    for (ConductionLaw law : laws()) {
      ConductionLaw plain = plain(law);
      for (double ohms : OHMS) {
        for (double volts : VOLTS) {
          double own = law.currentInSeriesAmps(volts, ohms);
          // Newton stops at 1e-12 of the source; a law may have only 1e-6 of it left across itself
          double allowed = 1e-5 * own;
          assertThat(plain.currentInSeriesAmps(volts, ohms)).isCloseTo(own, within(allowed));
          double back = law.currentInSeriesAmps(-volts, ohms);
          assertThat(plain.currentInSeriesAmps(-volts, ohms)).isCloseTo(back, within(-1e-5 * back));
        }
      }
    }
  }

  private static ConductionLaw plain(ConductionLaw law) {
    return new ConductionLaw() {
      @Override
      public double currentAmps(double volts) {
        return law.currentAmps(volts);
      }

      @Override
      public double differentialSiemens(double volts) {
        return law.differentialSiemens(volts);
      }
    };
  }

  /** Not a number stays not a number, and ends: it never turns into a current. */
  @Test
  public void notANumberNeverBecomesACurrent() {
    for (ConductionLaw law : laws()) {
      assertThat(becomesNumber(() -> law.currentAmps(Double.NaN))).as("%s", law).isFalse();
      assertThat(becomesNumber(() -> law.currentInSeriesAmps(Double.NaN, 1e6)))
          .as("%s", law)
          .isFalse();
    }
  }

  private static boolean becomesNumber(java.util.function.DoubleSupplier current) {
    try {
      return !Double.isNaN(current.getAsDouble());
    } catch (IllegalArgumentException refused) {
      return false;
    }
  }
}
