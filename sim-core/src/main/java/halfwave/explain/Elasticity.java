package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.Readings;
import halfwave.bench.Stages;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.quantity.RejectedValueException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much the DC depends on one parameter: percent of DC per percent of the parameter, by a small
 * change to both sides.
 *
 * @param parameter the parameter
 * @param dcElasticityRatio {@code d ln|DC| / d ln p} (1)
 */
public record Elasticity(Parameter parameter, double dcElasticityRatio) {

  /** Far above the solver's closure, far below where the laws bend. */
  private static final double SMALL_STEP = 0.01;

  /**
   * Every parameter that has a value other than zero or none, the strongest first.
   *
   * @param stages remembered stages
   * @param bench the bench
   * @return empty where the DC itself is nothing or could not be solved
   */
  public static List<Elasticity> all(Stages stages, Bench bench) {
    List<Elasticity> all = new ArrayList<>();
    OptionalDouble here = dcAmps(stages, bench);
    if (here.isEmpty() || Math.abs(here.getAsDouble()) < 1e-9) {
      return all;
    }
    for (Parameter p : Parameter.values()) {
      double value = p.of(bench);
      if (value != 0 && Math.abs(value) < Double.POSITIVE_INFINITY) {
        OptionalDouble slope = slope(stages, bench, p, value);
        if (slope.isPresent()) {
          all.add(new Elasticity(p, slope.getAsDouble() / here.getAsDouble()));
        }
      }
    }
    all.sort(Comparator.comparingDouble(e -> -Math.abs(e.dcElasticityRatio())));
    return all;
  }

  /** Change of DC per relative change of the parameter; one-sided at the end of its range. */
  private static OptionalDouble slope(Stages stages, Bench bench, Parameter p, double value) {
    double up = Math.min(value + SMALL_STEP * Math.abs(value), p.high());
    double down = Math.max(value - SMALL_STEP * Math.abs(value), p.low());
    try {
      OptionalDouble more = dcAmps(stages, p.with(bench, up));
      OptionalDouble less = dcAmps(stages, p.with(bench, down));
      return more.isPresent() && less.isPresent()
          ? OptionalDouble.of(
              (more.getAsDouble() - less.getAsDouble()) / ((up - down) / Math.abs(value)))
          : OptionalDouble.empty();
    } catch (RejectedValueException impossible) {
      // the neighbour does not exist, for instance a rod that would stand in metal
      return OptionalDouble.empty();
    }
  }

  private static OptionalDouble dcAmps(Stages stages, Bench bench) {
    SteadyState state = Readings.undisturbed(stages, bench);
    return state instanceof Solved solved
        ? OptionalDouble.of(solved.currentMeanAmps(Part.CONNECTOR))
        : OptionalDouble.empty();
  }
}
