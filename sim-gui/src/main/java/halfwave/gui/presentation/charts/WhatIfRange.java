package halfwave.gui.presentation.charts;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.explain.Axis;

/**
 * How far a number of the bench is turned in a chart: as far as it is met in practice and a little
 * beyond, or all the way.
 *
 * @param from first value, SI
 * @param to last value, SI
 * @param decades whether in equal ratios
 */
public record WhatIfRange(double from, double to, boolean decades) {

  /** Below this no number that can be zero is told from zero, as a share of its range. */
  private static final double LEAST_SHARE = 1e-9;

  /** A range wider than this is walked in equal ratios. */
  private static final double WIDE = 100;

  /** The range for a number on a bench. */
  static WhatIfRange of(Parameter parameter, Bench bench, Bench healthy, boolean full) {
    WhatIfRange usual = usual(parameter, parameter.of(healthy));
    double now = parameter.of(bench);
    boolean finite = now < Double.POSITIVE_INFINITY && !(usual.decades && now <= 0);
    boolean outside = finite && (now < usual.from || now > usual.to);
    return full || outside ? full(parameter, usual) : usual;
  }

  private static WhatIfRange full(Parameter p, WhatIfRange usual) {
    boolean decades = usual.decades || (p.low() > 0 && p.high() / p.low() > WIDE);
    double least = p.low() > 0 ? p.low() : Math.min(usual.from, p.high() * LEAST_SHARE);
    return new WhatIfRange(decades ? least : p.low(), p.high(), decades);
  }

  /** Round numbers about what service calls show [practice]. */
  private static WhatIfRange usual(Parameter p, double healthy) {
    return switch (p) {
      case SOURCE_VOLTS -> linear(10, 250);
      case SOURCE_OHMS -> new WhatIfRange(1e5, 1e8, true);
      case GAS_PRESSURE -> linear(0.2, 2);
      case PRIMARY_AIR -> linear(0.3, 1.5);
      case ION_STRENGTH -> linear(0, 2.5 * Math.max(healthy, 0.1));
      case BURNER_ATTACHMENT -> new WhatIfRange(0.01, 1, true);
      case ROD_ACROSS -> linear(-0.03, 0.03);
      case ROD_UP -> linear(-0.02, 0.02);
      case ROD_ALONG -> linear(-0.02, 0.06);
      case ROD_TURN, ROD_TILT, ROD_BEND -> linear(-Math.PI / 6, Math.PI / 6);
      case ROD_RADIUS -> linear(0.5e-3, 4e-3);
      case ROD_TEMPERATURE -> linear(300, 1500);
      case ROD_FILM -> new WhatIfRange(1e-7, 1e-3, true);
      case ROD_CRACKS, BURNER_SCALE, CONNECTOR, LEAD, GROUND -> new WhatIfRange(1e4, 1e9, true);
      case LEAKAGE, JUMPER, DEPOSIT -> new WhatIfRange(1e5, 1e10, true);
      case SENSE_SUPPLY -> linear(0, 1.5);
      case INPUT_OFFSET -> linear(-2e-6, 2e-6);
      case CABLE -> new WhatIfRange(1e-11, 1e-7, true);
      case ORIFICE -> linear(0.6 * healthy, 1.4 * healthy);
      case SILICON -> linear(0, 1e-6);
    };
  }

  private static WhatIfRange linear(double from, double to) {
    return new WhatIfRange(from, to, false);
  }

  /** So many values of it. */
  Axis axis(Parameter parameter, int count) {
    return decades
        ? Axis.logarithmic(parameter, from, to, count)
        : Axis.linear(parameter, from, to, count);
  }
}
