package halfwave.paper;

/** Is told how far something long has come, and can end it. */
@FunctionalInterface
public interface Watch {

  /** Lets it go on. */
  Watch PATIENT = (done, all) -> true;

  /**
   * Called after each part, on the thread that works.
   *
   * @param done how many parts are done
   * @param all how many there are
   * @return false to give up
   */
  boolean goOn(int done, int all);
}
