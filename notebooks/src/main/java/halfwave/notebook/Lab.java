package halfwave.notebook;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.Readings;
import halfwave.bench.Stages;
import halfwave.board.ShippedBoards;
import halfwave.circuit.Solved;
import halfwave.display.Sentences;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.flame.FlamePath;
import halfwave.instrument.MeterReading;
import halfwave.message.Quantity;
import halfwave.paper.BenchPicture;
import halfwave.picture.Picture;
import halfwave.picture.chart.SequenceChart;
import halfwave.picture.scene.DrawnView;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.sequence.Script;
import halfwave.sequence.Segment;
import halfwave.sequence.Sequence;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What nearly every cell does, by short names. In a notebook all of it is imported statically. What
 * is shown to a class is in the units of its meters, and every name says which; the model itself is
 * in SI units.
 */
public final class Lab {

  /** How the model's names and messages are said in the notebooks. */
  public static final Sentences ENGLISH = Sentences.in(Locale.ENGLISH);

  /** Of all chance in the notebooks: the same on every machine. */
  private static final long SEED = 1;

  /** What is left where a small number below zero is shown with few digits. */
  private static final Pattern SIGNED_ZERO = Pattern.compile("(?<![\\w.])-(0(?:\\.0+)?)(?![\\d.])");

  private Lab() {}

  /** Prints a line, made as {@link String#format} does it. */
  public static void say(String format, Object... arguments) {
    System.out.println(text(format, arguments));
  }

  /** A text with numbers in it, the same on every machine; a zero has no sign. */
  public static String text(String format, Object... arguments) {
    return SIGNED_ZERO.matcher(String.format(Locale.ROOT, format, arguments)).replaceAll("$1");
  }

  /**
   * Prints a claim with a tick, if it is true.
   *
   * @throws ClaimFailsException if it is not
   */
  public static void check(String claim, boolean holds) {
    if (!holds) {
      throw new ClaimFailsException(claim);
    }
    say("✓ %s", claim);
  }

  /** What the meters show on a bench, one hook-up at a time. */
  public static Readings readings(Bench bench) {
    return Readings.of(new Stages(), bench);
  }

  /** DC of a microammeter in the opened sense lead (µA); positive is from rod to burner. */
  public static double dcMicroamps(Bench bench) {
    return 1e6 * series(bench).meanAmps();
  }

  /** AC of the same meter, the mean removed (µA rms). */
  public static double acMicroamps(Bench bench) {
    return 1e6 * series(bench).alternatingRmsAmps();
  }

  private static MeterReading.Amps series(Bench bench) {
    return amps(readings(bench).series());
  }

  /**
   * A reading that is a current.
   *
   * @throws IllegalArgumentException where it is none, for instance because nothing was solved
   */
  public static MeterReading.Amps amps(MeterReading reading) {
    if (reading instanceof MeterReading.Amps amps) {
      return amps;
    }
    throw new IllegalArgumentException("reading = " + reading + ": a current");
  }

  /** A reading that is a voltage; otherwise as {@link #amps}. */
  public static MeterReading.Volts volts(MeterReading reading) {
    if (reading instanceof MeterReading.Volts volts) {
      return volts;
    }
    throw new IllegalArgumentException("reading = " + reading + ": a voltage");
  }

  /** A bench with one parameter taken through a range in equal steps; values in SI units. */
  public static Sweep sweep(Bench bench, Parameter parameter, double from, double to, int count) {
    return Sweep.of(bench, List.of(Axis.linear(parameter, from, to, count)));
  }

  /**
   * The periodic steady state of a bench with no meter anywhere.
   *
   * @throws IllegalArgumentException where the circuit cannot be solved
   */
  public static Solved solved(Bench bench) {
    if (Readings.undisturbed(new Stages(), bench) instanceof Solved solved) {
      return solved;
    }
    throw new IllegalArgumentException("bench = " + bench.name() + ": one that can be solved");
  }

  /** The flame of a bench: what its two electrodes and the gas between them pass. */
  public static FlamePath flame(Bench bench) {
    return new Stages().flame(bench).path();
  }

  /** Numbers in equal steps, both ends among them. */
  public static List<Double> range(double from, double to, int count) {
    return IntStream.range(0, count)
        .mapToObj(k -> ((count - 1 - k) * from + k * to) / (count - 1))
        .toList();
  }

  /** Each of the numbers by a function of it. */
  public static List<Double> each(List<Double> numbers, DoubleUnaryOperator function) {
    return numbers.stream().map(number -> function.applyAsDouble(number)).toList();
  }

  /** Samples in another unit, for instance amperes by 1e6 as microamps. */
  public static List<Double> scaled(double[] samples, double factor) {
    return DoubleStream.of(samples).mapToObj(sample -> factor * sample).toList();
  }

  /**
   * What a furnace does from cold: power at once, a call for heat after five seconds, and the acts.
   *
   * @param bench its bench; its board is the usual one for that kind of ignition
   * @param seconds how long (s)
   * @param acts what else is done meanwhile
   */
  public static Segment play(Bench bench, int seconds, Act... acts) {
    Moment cold = Moment.cold(bench, ShippedBoards.standard(bench.design().ignition()), SEED);
    return new Sequence().advance(cold, 1000L * seconds, Script.withStart(List.of(acts)));
  }

  /** A furnace two minutes after its call for heat. */
  public static Moment running(Bench bench) {
    return play(bench, 120).end();
  }

  /** A deed, so many seconds after power. */
  public static Act at(int seconds, Deed deed) {
    return new Act(1000L * seconds, deed);
  }

  /** One number of the bench takes another value (SI units), for instance an open connector. */
  public static Deed turn(Parameter parameter, double value) {
    return new Deed.Alter(new Change.Turned(parameter, new Quantity(value, parameter.dimension())));
  }

  /** The timeline of what was played: board, gas, flame and signal. */
  public static Picture timeline(Segment played) {
    SequenceChart chart = new SequenceChart(played.start(), played.end().timeMillis(), List.of());
    chart.add(played);
    return chart.picture(ENGLISH);
  }

  /** The drawing of a bench at a moment, seen from above. */
  public static Picture drawing(Moment moment) {
    return BenchPicture.of(moment, DrawnView.ABOVE, ENGLISH);
  }
}
