package halfwave.cli;

import halfwave.explain.Sweep;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.PrintWriter;

/** Says on standard error how far a sweep is, where somebody watches and it takes long. */
final class Progress implements Sweep.Watch {

  private static final long PATIENCE_NANOS = 500_000_000L;

  private final Standard standard;
  private final boolean watched = System.console() != null;
  private long last = System.nanoTime();
  private boolean said;

  Progress(Standard standard) {
    this.standard = standard;
  }

  @Override
  public boolean goOn(int done, int all) {
    long now = System.nanoTime();
    if (watched && now - last > PATIENCE_NANOS) {
      last = now;
      said = true;
      String text =
          standard
              .sentences()
              .text(
                  Message.of(MessageKey.SWEEP_PROGRESS, Argument.count(done), Argument.count(all)));
      print("\r" + text);
    }
    return true;
  }

  /** Clears the line. */
  void end() {
    if (said) {
      print("\r" + " ".repeat(40) + "\r");
    }
  }

  private void print(String text) {
    PrintWriter err = standard.spec().commandLine().getErr();
    err.print(text);
    err.flush();
  }
}
