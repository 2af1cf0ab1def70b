package halfwave.notebook.kernel;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.dflib.jjava.jupyter.channels.JupyterConnection;
import org.dflib.jjava.jupyter.kernel.KernelConnectionProperties;
import org.jspecify.annotations.Nullable;

/** Makes the kernel known to notebook programs; they then start it by the same class. */
public final class Main {

  /** Before the name of the file that a notebook program writes for its kernel. */
  static final String CONNECT = "--connect";

  private static final int BAD_INPUT = 2;

  private Main() {}

  /**
   * Installs, removes or runs the kernel.
   *
   * @param arguments nothing to install it for this user; {@code --to DIR} below a folder; with
   *     {@code --remove} the opposite
   */
  public static void main(String[] arguments) throws IOException, GeneralSecurityException {
    if (arguments.length == 2 && arguments[0].equals(CONNECT)) {
      connect(Path.of(arguments[1]));
      return;
    }
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int status = command(List.of(arguments), out, err);
    if (status != 0) {
      System.exit(status);
    }
  }

  private static void connect(Path file) throws IOException, GeneralSecurityException {
    JupyterConnection connection =
        new JupyterConnection(KernelConnectionProperties.parse(Files.readString(file)));
    HalfwaveKernel kernel = new HalfwaveKernel();
    kernel.becomeHandlerForConnection(connection);
    connection.connect();
    kernel.onStartup();
    connection.waitUntilClose();
    // a cell may have left a thread behind
    System.exit(0);
  }

  /** Installs or removes, and says so; the exit status. */
  static int command(List<String> arguments, PrintStream out, PrintStream err) {
    Path to = null;
    boolean remove = false;
    Deque<String> rest = new ArrayDeque<>(arguments);
    while (!rest.isEmpty()) {
      String argument = rest.pop();
      if (argument.equals("--help")) {
        out.println(Words.of("install.help"));
        return 0;
      } else if (argument.equals("--remove")) {
        remove = true;
      } else if (argument.equals("--to") && !rest.isEmpty() && !rest.peek().startsWith("--")) {
        to = path(rest.pop());
        if (to == null) {
          err.println(Words.of("install.folder"));
          return BAD_INPUT;
        }
      } else {
        err.println(Words.of(argument.equals("--to") ? "install.folder" : "install.bad", argument));
        return BAD_INPUT;
      }
    }
    return change(to, remove, out, err);
  }

  private static @Nullable Path path(String name) {
    try {
      return Path.of(name).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      return null;
    }
  }

  private static int change(@Nullable Path to, boolean remove, PrintStream out, PrintStream err) {
    Path home = Path.of(System.getProperty("user.home"));
    Path usual = KernelSpec.usual(System.getenv(), System.getProperty("os.name"), home);
    KernelSpec spec = new KernelSpec(to == null ? usual : to);
    try {
      if (remove) {
        boolean removed = spec.remove();
        out.println(Words.of(removed ? "install.removed" : "install.none", spec.folder()));
        return 0;
      }
      spec.write(java(), classPath());
    } catch (IOException e) {
      err.println(Words.of("install.unwritable", spec.folder()));
      return BAD_INPUT;
    }
    out.println(Words.of("install.done", spec.folder()));
    if (to != null && !to.equals(usual)) {
      out.println(Words.of("install.path", to));
    }
    out.println(Words.of("install.start"));
    return 0;
  }

  /** The Java that runs this now. */
  static Path java() {
    return Path.of(System.getProperty("java.home"), "bin", "java");
  }

  /** The class path of this process, wherever the kernel is started later. */
  static String classPath() {
    String separator = System.getProperty("path.separator");
    List<String> places = List.of(System.getProperty("java.class.path").split(separator, -1));
    return String.join(
        separator, places.stream().map(p -> Path.of(p).toAbsolutePath().toString()).toList());
  }
}
