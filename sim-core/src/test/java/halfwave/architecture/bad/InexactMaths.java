package halfwave.architecture.bad;

import java.util.function.DoubleUnaryOperator;

/** Breaks the same-bits rule by a call, a method reference and a call inside a lambda. */
final class InexactMaths {
  private InexactMaths() {}

  static final DoubleUnaryOperator SINE = Math::sin;
  static final DoubleUnaryOperator LENGTH = x -> Math.hypot(x, 1);

  static double growth(double x) {
    return Math.exp(Math.sqrt(x));
  }
}
