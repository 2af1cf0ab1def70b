package halfwave.circuit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs the outside program ngspice on a deck and demands every value it should print. */
public final class Ngspice {

  private static final Pattern RUN = Pattern.compile("(?m)^tran (\\S+) (\\S+) (\\S+) (\\S+) uic$");

  private Ngspice() {}

  /** Whether the program can be started here. */
  public static boolean present() {
    try {
      Process p = new ProcessBuilder("ngspice", "--version").redirectErrorStream(true).start();
      p.getInputStream().readAllBytes();
      return p.waitFor(20, TimeUnit.SECONDS) && p.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** The same deck, ended after its first period, whose samples it then keeps. */
  public static String firstPeriod(String deck, double hertz) {
    Matcher run = RUN.matcher(deck);
    if (!run.find()) {
      throw new IllegalArgumentException("no tran line in the deck");
    }
    String step = run.group(1);
    return run.replaceFirst(
        "tran " + step + " " + 1 / hertz + " " + step + " " + run.group(4) + " uic");
  }

  /** The program itself gave up on a time step; says nothing of the circuit's solution. */
  public static final class GaveUp extends RuntimeException {
    private static final long serialVersionUID = 1L;

    GaveUp(String message) {
      super(message);
    }
  }

  /** The program was stopped after {@link #LONGEST_SECONDS}; says nothing of the circuit either. */
  public static final class TookTooLong extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  /** Hundreds of times what a deck usually takes, so that a busy machine changes no count. */
  public static final int LONGEST_SECONDS = 120;

  /**
   * The five values; fails where one is missing, since the program exits 0 even then.
   *
   * @throws GaveUp where the program could not continue its own time stepping
   * @throws TookTooLong where it had not finished in time
   */
  public static double[] five(String deck) {
    try {
      Path file = Files.createTempFile("halfwave", ".cir");
      Path printed = Files.createTempFile("halfwave", ".out");
      try {
        Files.writeString(file, deck);
        Process p =
            new ProcessBuilder("ngspice", "-b", file.toString())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        p.getOutputStream().close();
        boolean ended = p.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS);
        p.destroyForcibly().waitFor();
        if (!ended) {
          throw new TookTooLong();
        }
        String out = Files.readString(printed, StandardCharsets.UTF_8);
        if (out.contains("Timestep too small")) {
          throw new GaveUp(out);
        }
        return OracleCircuits.NAMES.stream().mapToDouble(name -> value(out, name)).toArray();
      } finally {
        Files.delete(file);
        Files.delete(printed);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static double value(String out, String name) {
    Matcher m =
        Pattern.compile("(?m)^" + name.toLowerCase(Locale.ROOT) + " = (\\S+)\\s*$")
            .matcher(out.toLowerCase(Locale.ROOT));
    if (!m.find()) {
      throw new AssertionError("ngspice printed no " + name + ":\n" + out);
    }
    return Double.parseDouble(m.group(1));
  }
}
