package halfwave.cli;

import halfwave.evidence.SymptomTable;
import halfwave.explain.Sweep;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.sequence.Segment;
import java.io.PrintWriter;
import java.util.function.Supplier;

/**
 * Says on standard error how far a sweep or a sequence is, where somebody watches and it takes
 * long.
 */
final class Progress implements Sweep.Watch, SymptomTable.Watch {

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
    return tell(
        () -> Message.of(MessageKey.SWEEP_PROGRESS, Argument.count(done), Argument.count(all)));
  }

  /** The same for a sequence, in the time that has been played. */
  boolean goOn(Segment slice, long untilMillis) {
    return tell(
        () ->
            Message.of(
                MessageKey.SEQUENCE_PROGRESS,
                played(slice.end().timeMillis()),
                played(untilMillis)));
  }

  /** The same for pictures. */
  boolean painted(int done, int all) {
    return tell(
        () -> Message.of(MessageKey.PICTURES_PROGRESS, Argument.count(done), Argument.count(all)));
  }

  private static Argument played(long millis) {
    return Argument.quantity(millis / 1000.0, Dimension.TIME);
  }

  private boolean tell(Supplier<Message> said) {
    long now = System.nanoTime();
    if (watched && now - last > PATIENCE_NANOS) {
      last = now;
      this.said = true;
      // what stood there may have been longer
      print("\r" + standard.sentences().text(said.get()) + "   ");
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
