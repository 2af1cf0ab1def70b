package halfwave.architecture.bad;

/** Prints where it should answer with a value. */
final class Printer {
  private Printer() {}

  static void report(Exception failure) {
    System.out.println("failed");
    failure.printStackTrace();
  }
}
