package halfwave.notebook.kernel;

import org.jspecify.annotations.Nullable;

/**
 * Where a cell leaves the object it ends with. Cells run in this same process, so that a picture
 * reaches the page as a picture and not as its name. Public because cells call it.
 */
public final class Handover {

  private static @Nullable Object left;

  private Handover() {}

  /** Leaves an object. */
  public static synchronized void leave(@Nullable Object result) {
    left = result;
  }

  /** The object that was left last; afterwards there is none. */
  static synchronized @Nullable Object take() {
    Object result = left;
    left = null;
    return result;
  }
}
