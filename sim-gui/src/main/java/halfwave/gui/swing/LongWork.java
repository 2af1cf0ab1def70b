package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.io.BadInputException;
import halfwave.paper.Watch;
import java.awt.BorderLayout;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/**
 * Work that takes longer than anybody waits, away from the event thread. After a moment it says how
 * far it is, and can be given up.
 */
final class LongWork {

  /** What is done sooner needs no window of its own (ms). */
  private static final int PATIENCE_MILLIS = 400;

  private final JFrame over;
  private final Wording words;
  private final Consumer<String> notice;
  private final Consumer<Throwable> trouble;

  LongWork(JFrame over, Wording words, Consumer<String> notice, Consumer<Throwable> trouble) {
    this.over = over;
    this.words = words;
    this.notice = notice;
    this.trouble = trouble;
  }

  /** What is to be done. */
  @FunctionalInterface
  interface Work {

    /**
     * Does it.
     *
     * @param watch is told how far it is
     * @return what there is to say, or null: it was given up
     */
    @Nullable String done(Watch watch) throws Exception;
  }

  /** Begins it. */
  void begin(Work work) {
    new Worker(work).execute();
  }

  private final class Worker extends SwingWorker<String, Integer> {

    private final Work work;
    private final JDialog dialog = new JDialog(over, words.text("paper.working"), false);
    private final JProgressBar bar = new JProgressBar();
    private final Timer patience;
    private volatile boolean givenUp;

    Worker(Work work) {
      this.work = work;
      JPanel panel = new JPanel(new BorderLayout(12, 12));
      panel.setBorder(BorderFactory.createEmptyBorder(16, 18, 14, 18));
      panel.add(new JLabel(words.text("paper.working")), BorderLayout.NORTH);
      bar.setIndeterminate(true);
      bar.setStringPainted(true);
      bar.setString(" ");
      panel.add(bar, BorderLayout.CENTER);
      JButton end = new JButton(words.text("file.cancel"));
      end.setName("paper.cancel");
      end.addActionListener(e -> giveUp());
      panel.add(end, BorderLayout.SOUTH);
      dialog.setContentPane(panel);
      dialog.setDefaultCloseOperation(JDialog.DO_NOTHING_ON_CLOSE);
      dialog.pack();
      dialog.setLocationRelativeTo(over);
      // the listener looks, since it may have been queued before the work was done
      patience = new Timer(PATIENCE_MILLIS, e -> dialog.setVisible(!isDone() && !givenUp));
      patience.setRepeats(false);
      patience.start();
    }

    /** Nobody waits to see it end. */
    private void giveUp() {
      givenUp = true;
      patience.stop();
      dialog.dispose();
    }

    @Override
    protected @Nullable String doInBackground() throws Exception {
      return work.done(
          (done, all) -> {
            javax.swing.SwingUtilities.invokeLater(() -> tell(done, all));
            return !givenUp;
          });
    }

    private void tell(int done, int all) {
      bar.setIndeterminate(false);
      bar.setMaximum(all);
      bar.setValue(done);
      bar.setString(words.text("paper.done-so-far", done, all));
    }

    @Override
    protected void done() {
      patience.stop();
      dialog.dispose();
      try {
        String said = get();
        notice.accept(said == null ? words.text("paper.given-up") : said);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      } catch (ExecutionException e) {
        failed(e.getCause() == null ? e : e.getCause());
      }
    }

    private void failed(Throwable cause) {
      if (cause instanceof BadInputException bad) {
        say(bad.line(words.sentences()));
      } else if (cause instanceof java.awt.print.PrinterException printer) {
        say(words.text("paper.print-failed", String.valueOf(printer.getMessage())));
      } else {
        trouble.accept(cause);
      }
    }

    private void say(String line) {
      JOptionPane.showMessageDialog(over, line, over.getTitle(), JOptionPane.ERROR_MESSAGE);
    }
  }
}
