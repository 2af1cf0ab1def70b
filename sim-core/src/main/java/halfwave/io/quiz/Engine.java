package halfwave.io.quiz;

import halfwave.io.evidence.CaseCache;

/** Which program a file was made with. */
public final class Engine {

  /** Version of the program; a test compares it with the build's. */
  static final String VERSION = "0.1.0";

  private Engine() {}

  /** Name, version, and the number of the model: what decides whether readings are the same. */
  public static String text() {
    return "halfwave " + VERSION + " model " + CaseCache.MODEL;
  }
}
