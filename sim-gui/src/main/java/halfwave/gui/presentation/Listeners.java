package halfwave.gui.presentation;

import java.util.ArrayList;
import java.util.List;

/** Those who are told when something changed. */
public final class Listeners {

  private final List<Runnable> all = new ArrayList<>();

  /** One more, who is told at once; what comes back ends it. */
  public Runnable add(Runnable listener) {
    all.add(listener);
    listener.run();
    return () -> all.remove(listener);
  }

  /** Tells them all. */
  public void tell() {
    List.copyOf(all).forEach(Runnable::run);
  }
}
