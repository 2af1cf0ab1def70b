package halfwave.circuit;

/**
 * One voltage or current of a reduced circuit, as a linear function of what the periodic solution
 * holds: the mode states, the port unknowns (currents, then free potentials) and the source.
 *
 * <p>{@code s(t) = Σ perMode_m·y_m(t) + Σ perPort_k·a_k(t) + √2·V·(sine·sin ωt + cosine·cos ωt)}
 */
final class Signal {

  private final double[] perMode;
  private final double[] perPort;
  private final double sine;
  private final double cosine;

  Signal(double[] perMode, double[] perPort, double sine, double cosine) {
    this.perMode = perMode;
    this.perPort = perPort;
    this.sine = sine;
    this.cosine = cosine;
  }

  static Signal zero(int modes, int ports) {
    return new Signal(new double[modes], new double[ports], 0, 0);
  }

  double[] perMode() {
    return perMode;
  }

  double[] perPort() {
    return perPort;
  }

  double sine() {
    return sine;
  }

  double cosine() {
    return cosine;
  }

  /** {@code this + factor·other}. */
  Signal plus(double factor, Signal other) {
    double[] m = perMode.clone();
    for (int k = 0; k < m.length; k++) {
      m[k] += factor * other.perMode[k];
    }
    double[] p = perPort.clone();
    for (int k = 0; k < p.length; k++) {
      p[k] += factor * other.perPort[k];
    }
    return new Signal(m, p, sine + factor * other.sine, cosine + factor * other.cosine);
  }
}
