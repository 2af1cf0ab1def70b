package halfwave.app;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /**
   * Starts the program.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    System.out.println("Halfwave: flame rectification, simulated from the physics up.");
  }
}
