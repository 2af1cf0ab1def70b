package halfwave.matching;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Parameter;
import halfwave.quantity.Dimension;
import org.apache.commons.math3.util.FastMath;

/**
 * A number of the bench that readings are asked for. Each is fitted in a coordinate u of its own,
 * in which readings bend little and what was known before is a normal distribution about zero:
 *
 * <ul>
 *   <li>a size: {@code u = ln(value / value on the bench)};
 *   <li>wear, which is nothing on a healthy bench and has one sign: {@code u = ln(1 + wear/usual)},
 *       zero or above.
 * </ul>
 *
 * <p>All widths are practice or judgement, wide enough that readings decide wherever they can.
 */
public enum Unknown {
  /** Open-circuit voltage of the sense source; a board's label and age leave about 25 %. */
  SOURCE_VOLTS(Parameter.SOURCE_VOLTS, 0.25),
  /** Its resistance, within a factor of two. */
  SOURCE_OHMS(Parameter.SOURCE_OHMS, 0.7),
  /** Strength of all ion sources; the absolute scale is uncertain by a factor of 3. */
  ION_STRENGTH(Parameter.ION_STRENGTH, 0.55),
  /** Share of ports where flame meets metal, lost by {@code e^−u}. */
  BURNER_ATTACHMENT(Parameter.BURNER_ATTACHMENT, 0.5),
  /** Film on the rod as found, cracks in proportion; shows from about 10 µm on. */
  FILM(Parameter.ROD_FILM, 1.5),
  /** What cleaning has left of it; little, as a rule. */
  FILM_LEFT(Parameter.ROD_FILM, 0.3),
  /** Leakage to the chassis; shows from about 20 MΩ downwards. */
  LEAKAGE(Parameter.LEAKAGE, 1.5);

  private static final double FILM_METERS = 10e-6;
  private static final double LEAKAGE_OHMS = 20e6;

  /** No share of the ports, film or leak beyond a hundredfold of what shows. */
  private static final double MOST_WEAR = FastMath.log(99);

  /** A size is looked for so many widths to both sides. */
  private static final double MOST_WIDTHS = 4;

  private final Parameter parameter;
  private final double width;

  Unknown(Parameter parameter, double width) {
    this.parameter = parameter;
    this.width = width;
  }

  /** What it measures. */
  public Dimension dimension() {
    return parameter.dimension();
  }

  /** Whether it is nothing on a healthy bench and can only grow. */
  public boolean isWear() {
    return switch (this) {
      case SOURCE_VOLTS, SOURCE_OHMS, ION_STRENGTH -> false;
      case BURNER_ATTACHMENT, FILM, FILM_LEFT, LEAKAGE -> true;
    };
  }

  /** Standard deviation of u before any reading (1) [practice, judgement]. */
  public double widthRatio() {
    return width;
  }

  /** Smallest u. */
  double least() {
    return isWear() ? 0 : -MOST_WIDTHS * width;
  }

  /** Largest u. */
  double most() {
    return isWear() ? MOST_WEAR : MOST_WIDTHS * width;
  }

  /** Whether another value makes another flame, which costs more than another circuit. */
  boolean changesFlame() {
    return this == ION_STRENGTH || this == BURNER_ATTACHMENT;
  }

  /**
   * The value in SI.
   *
   * @param bench the bench that the fit starts from
   * @param u the coordinate
   */
  public double si(Bench bench, double u) {
    return switch (this) {
      case SOURCE_VOLTS, SOURCE_OHMS, ION_STRENGTH ->
          Math.max(
              parameter.low(), Math.min(parameter.high(), parameter.of(bench) * FastMath.exp(u)));
      case BURNER_ATTACHMENT -> FastMath.exp(-u);
      case FILM, FILM_LEFT -> FILM_METERS * FastMath.expm1(u);
      case LEAKAGE -> leakageOhms(u);
    };
  }

  /**
   * The coordinate of a value, for a picture: the inverse of {@link #si}.
   *
   * @param bench the bench that the fit starts from
   * @param si the value in SI; infinite for no leakage
   */
  public double u(Bench bench, double si) {
    return switch (this) {
      case SOURCE_VOLTS, SOURCE_OHMS, ION_STRENGTH -> FastMath.log(si / parameter.of(bench));
      case BURNER_ATTACHMENT -> -FastMath.log(si);
      case FILM, FILM_LEFT -> FastMath.log1p(si / FILM_METERS);
      case LEAKAGE -> FastMath.log1p(LEAKAGE_OHMS / si);
    };
  }

  /** Beyond what a parameter can say there is none. */
  private static double leakageOhms(double u) {
    double ohms = LEAKAGE_OHMS / FastMath.expm1(u);
    return Parameter.LEAKAGE.accepts(ohms) ? ohms : Double.POSITIVE_INFINITY;
  }

  /** The bench with that value in it, cleaned or not; a film that is not there now is left out. */
  Bench on(Bench bench, double si, boolean cleaned) {
    return switch (this) {
      case SOURCE_VOLTS, SOURCE_OHMS, ION_STRENGTH, BURNER_ATTACHMENT, LEAKAGE ->
          parameter.with(bench, si);
      case FILM -> cleaned ? bench : filmed(bench, si);
      case FILM_LEFT -> cleaned ? filmed(bench, si) : bench;
    };
  }

  private static Bench filmed(Bench bench, double meters) {
    return bench.with(bench.condition().withRodCoat(Coat.CLEAN.thicker(meters, 1)));
  }
}
