package halfwave.app;

import halfwave.cli.HalfwaveCommand;
import halfwave.display.Sentences;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.swing.Window;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.Console;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Where the program starts. */
public final class Main {

  private static final String ALONE =
      "halfwave.jar needs the folder lib beside it: copy the whole folder.";

  private Main() {}

  /**
   * Starts the program and ends it with the exit status of the command.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    if (!whole()) {
      alone();
      System.exit(1);
    }
    Path given = given(args);
    if (args.length > 0 && given == null) {
      // a command opens no window, and must draw where the display that is named does not answer
      System.setProperty("java.awt.headless", "true");
    }
    if ((args.length == 0 || given != null) && display()) {
      window(given);
      return;
    }
    int status = command(args);
    if (status != 0) {
      System.exit(status);
    }
  }

  /** Whether the jar found the library that it was built with, in the folder beside it. */
  private static boolean whole() {
    try {
      Class.forName("halfwave.message.Message", false, Main.class.getClassLoader());
      return true;
    } catch (ClassNotFoundException e) {
      return false;
    }
  }

  /** The jar was copied without its folder. All other words of the program are in that folder. */
  private static void alone() {
    System.err.println("halfwave: " + ALONE);
    if (display()) {
      JOptionPane.showMessageDialog(null, ALONE, "Halfwave", JOptionPane.ERROR_MESSAGE);
    }
  }

  /** The file that a desktop hands over; a command is never called like a file with an ending. */
  private static @Nullable Path given(String... args) {
    return args.length == 1 && args[0].matches("[^-].*\\.(halfwave|json)")
        ? Path.of(args[0])
        : null;
  }

  /** Whether there is a display that answers. */
  private static boolean display() {
    try {
      return !GraphicsEnvironment.isHeadless()
          && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
    } catch (AWTError | HeadlessException e) {
      return false;
    }
  }

  /** The window. It ends the program when it is closed: no thread that is left keeps it going. */
  private static void window(@Nullable Path given) {
    // the event thread reads letters and look, this one what reads settings and sentences
    SwingUtilities.invokeLater(Window::load);
    SettingsFile settings =
        new SettingsFile(
            SettingsFile.usual(
                System.getProperty("user.home"),
                Objects.requireNonNullElse(System.getenv("XDG_CONFIG_HOME"), "")));
    ExecutorService engine = worker("engine", Thread.NORM_PRIORITY);
    // what may take its time: charts, explanations, files
    ExecutorService background = worker("background", Thread.MIN_PRIORITY);
    Sentences.in(Locale.getDefault());
    SwingUtilities.invokeLater(() -> new Window(settings, engine, background).open(given));
  }

  private static ExecutorService worker(String name, int priority) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          thread.setPriority(priority);
          return thread;
        });
  }

  private static int command(String... args) {
    PrintWriter out = writer(System.out);
    int status = HalfwaveCommand.run(out, writer(System.err), Locale.getDefault(), args);
    // an answer that did not arrive (a full disk, a closed pipe) is no success
    return out.checkError() && status == 0 ? 1 : status;
  }

  /** A console says how it reads; a file or pipe gets UTF-8, which also a plain C locale shows. */
  private static PrintWriter writer(PrintStream stream) {
    Console console = System.console();
    Charset charset =
        console == null || console.charset().equals(StandardCharsets.US_ASCII)
            ? StandardCharsets.UTF_8
            : console.charset();
    return new PrintWriter(stream, false, charset);
  }
}
