package halfwave.quiz;

import halfwave.bench.Bench;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Draws;
import halfwave.diagnosis.Variation;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.quantity.Noise;
import halfwave.quantity.RejectedValueException;
import halfwave.work.Finding;
import halfwave.work.Recollection;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * The furnace that a learner meets on a service call: another of its kind, with one of the hidden
 * faults. Neighbours in a class meet different ones that are as hard.
 *
 * @param call the service call
 * @param number which of its furnaces, from zero up to {@link #COUNT}
 * @param seed of all chance in it
 * @param cause what is wrong
 * @param asFound the furnace with all that is wrong
 */
public record Variant(ServiceCall call, int number, long seed, Cause cause, Bench asFound) {

  /** How many furnaces there are for each call. */
  public static final int COUNT = 8;

  /**
   * Severities that are drawn are from the middle of their range: equal for all (1) [judgement].
   */
  private static final double LEAST_RANK = 0.35;

  private static final double RANKS = 0.3;

  /** A furnace that has no room for the fault: so often another is tried. */
  private static final int ATTEMPTS = 20;

  private static final int SPREADS = 10;

  /**
   * The one of a learner.
   *
   * @param call the service call
   * @param quizSeed seed of the quiz
   * @param learner name or code, as the answer sheet has it
   */
  public static Variant of(ServiceCall call, long quizSeed, String learner) {
    CRC32 crc = new CRC32();
    crc.update((learner + "\n" + call.name()).getBytes(StandardCharsets.UTF_8));
    double u = Noise.uniform(quizSeed, Noise.Purpose.VARIANT, crc.getValue());
    return numbered(call, quizSeed, (int) (u * COUNT));
  }

  /** The same by its number. */
  public static Variant numbered(ServiceCall call, long quizSeed, int number) {
    Hidden hidden = hidden(call, number);
    CRC32 crc = new CRC32();
    crc.update(call.name().getBytes(StandardCharsets.UTF_8));
    long seed = (quizSeed * 31 + crc.getValue()) * COUNT + number;
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      try {
        Bench bench = faulty(variation(seed, attempt).on(call.bench()), hidden, seed);
        return new Variant(call, number, seed, hidden.cause(), bench);
      } catch (RejectedValueException e) {
        // this very furnace has no room for it: another of its kind
        continue;
      }
    }
    return new Variant(call, number, seed, hidden.cause(), faulty(call.bench(), hidden, seed));
  }

  /**
   * What the customer answers when asked since when. Nobody remembers how this furnace differs from
   * others of its kind; and what is repaired on it changes no memory.
   */
  Finding since() {
    Finding told = call.since();
    return told == null
        ? Recollection.sinceWhen(faulty(call.bench(), hidden(call, number), seed).condition())
        : told;
  }

  private static Hidden hidden(ServiceCall call, int number) {
    return call.hidden().get(number % call.hidden().size());
  }

  private static Variation variation(long seed, int attempt) {
    double[] u = new double[SPREADS];
    for (int k = 0; k < u.length; k++) {
      u[k] = uniform(seed, 100L * (attempt + 1) + k);
    }
    return Draws.variation(u);
  }

  private static Bench faulty(Bench sound, Hidden hidden, long seed) {
    Bench faulty = sound;
    for (Hidden.Part part : hidden.faults()) {
      FaultKind kind = part.kind();
      double drawn = LEAST_RANK + RANKS * uniform(seed, kind.ordinal());
      Fault fixed = part.fixed();
      Fault fault = fixed == null ? Fault.of(kind, Draws.severity(kind, drawn)) : fixed;
      faulty = fault.on(faulty);
    }
    return faulty;
  }

  private static double uniform(long seed, long what) {
    // a normal quantile has none at zero
    return Math.max(1e-9, Noise.uniform(seed, Noise.Purpose.VARIANT, what));
  }
}
