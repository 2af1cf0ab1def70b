package halfwave.gui.presentation.charts;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Readings;
import halfwave.bench.Stages;
import halfwave.circuit.SteadyState;
import halfwave.flame.FlamePath;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.bench.State;

/**
 * The bench as it would be with everything in order: what charts show behind the present one.
 *
 * @param bench design of the paper, healthy
 * @param steady its sense circuit, no meter anywhere
 * @param path its flame
 */
public record Healthy(Bench bench, SteadyState steady, FlamePath path) {

  /** The healthy bench of a design; nothing has to be computed to know it. */
  public static Bench bench(State state) {
    return state.paper().bench().with(Condition.HEALTHY);
  }

  /** Solves it. */
  public static Healthy of(Bench healthy) {
    Stages stages = new Stages();
    return new Healthy(
        healthy, Readings.undisturbed(stages, healthy), stages.flame(healthy).path());
  }

  /** The same as work for {@link Inquiry}. */
  public static void answer(Bench healthy, Inquiry.Hearing<Healthy> hearing) {
    hearing.tell(of(healthy));
  }
}
