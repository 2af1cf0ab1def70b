package halfwave.circuit;

/**
 * Decay modes of {@code C·x′ = −A·x} with C symmetric positive definite and A symmetric positive
 * semidefinite: Cholesky, then Jacobi rotations, which keep the small decays accurate beside the
 * large ones (Demmel and Veselić, SIAM J. Matrix Anal. Appl. 13 (1992) 1204; from memory), where
 * decays of 0.1 and 10⁸ 1/s stand in one circuit.
 */
final class SymmetricModes {

  /** Decay of each mode (1/s), zero or above. */
  final double[] decayPerSecond;

  /** States from modes: {@code x = W·y}; Wᵀ·C·W is the unit matrix. */
  final double[][] stateFromMode;

  SymmetricModes(double[][] capacitance, double[][] conductance) {
    int n = capacitance.length;
    double[][] l = cholesky(capacitance);
    double[][] a = new double[n][];
    for (int i = 0; i < n; i++) {
      a[i] = forward(l, conductance[i]);
    }
    a = transpose(a);
    for (int i = 0; i < n; i++) {
      a[i] = forward(l, a[i]);
    }
    double[][] q = diagonalise(a);
    decayPerSecond = new double[n];
    stateFromMode = new double[n][n];
    for (int m = 0; m < n; m++) {
      decayPerSecond[m] = Math.max(0, a[m][m]);
      for (int i = n - 1; i >= 0; i--) {
        double sum = q[i][m];
        for (int k = i + 1; k < n; k++) {
          sum -= l[k][i] * stateFromMode[k][m];
        }
        stateFromMode[i][m] = sum / l[i][i];
      }
    }
  }

  private static double[][] cholesky(double[][] c) {
    int n = c.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = c[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
    return l;
  }

  private static double[] forward(double[][] l, double[] b) {
    int n = b.length;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = b[i];
      for (int k = 0; k < i; k++) {
        sum -= l[i][k] * x[k];
      }
      x[i] = sum / l[i][i];
    }
    return x;
  }

  private static double[][] transpose(double[][] a) {
    int n = a.length;
    double[][] t = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        t[j][i] = a[i][j];
      }
    }
    return t;
  }

  /** Cyclic Jacobi: leaves the eigenvalues on the diagonal of a, returns the eigenvectors. */
  private static double[][] diagonalise(double[][] a) {
    int n = a.length;
    double[][] q = new double[n][n];
    for (int i = 0; i < n; i++) {
      q[i][i] = 1;
    }
    boolean rotated = true;
    for (int round = 0; rotated && round < 40; round++) {
      rotated = false;
      for (int i = 0; i < n - 1; i++) {
        for (int j = i + 1; j < n; j++) {
          double off = 0.5 * (a[i][j] + a[j][i]);
          if (Math.abs(off) > 1e-16 * Math.sqrt(Math.abs(a[i][i] * a[j][j]))) {
            rotate(a, q, i, j, off);
            rotated = true;
          }
        }
      }
    }
    return q;
  }

  private static void rotate(double[][] a, double[][] q, int i, int j, double off) {
    double theta = (a[j][j] - a[i][i]) / (2 * off);
    double t = Math.signum(theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
    if (theta == 0) {
      t = 1;
    }
    double c = 1 / Math.sqrt(t * t + 1);
    double s = t * c;
    double ii = a[i][i] - t * off;
    double jj = a[j][j] + t * off;
    for (int k = 0; k < a.length; k++) {
      if (k != i && k != j) {
        double ki = 0.5 * (a[k][i] + a[i][k]);
        double kj = 0.5 * (a[k][j] + a[j][k]);
        a[k][i] = a[i][k] = c * ki - s * kj;
        a[k][j] = a[j][k] = s * ki + c * kj;
      }
      double qi = q[k][i];
      double qj = q[k][j];
      q[k][i] = c * qi - s * qj;
      q[k][j] = s * qi + c * qj;
    }
    a[i][i] = ii;
    a[j][j] = jj;
    a[i][j] = a[j][i] = 0;
  }
}
