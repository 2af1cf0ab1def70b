import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes what people install, on the system that it runs on: an application with its own runtime, the same as a zip that
 * needs no rights, and a package. After {@code mvn -q -DskipTests package}, from the root of the sources:
 *
 * <pre>java sim-gui/src/main/installer/Installers.java</pre>
 *
 * <p>With the name of a kind (deb, rpm, msi, exe, dmg, pkg, or none) it makes that package instead of the usual one. All
 * goes to {@code sim-gui/target/installers}.
 */
public final class Installers {

  private static final String NAME = "halfwave";

  /** The same program in a terminal: started for its long computations, not for its window. */
  private static final String COMMAND = "halfwave-command";

  /**
   * The first compiler alone and the simplest collector: half the work until the window is there. A
   * heap that is given back keeps the window small among others.
   */
  private static final String WINDOW_OPTIONS =
      "-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xms48m -Xmn20m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=30";

  /** What {@code jdeps} finds, and what it cannot see: accessibility, numbers and dates of all languages. */
  private static final String MODULES =
      "java.desktop,java.logging,java.management,java.naming,java.prefs,java.sql,java.xml,"
          + "jdk.accessibility,jdk.localedata,jdk.unsupported";

  /** How long the window may take to load what it loads. */
  private static final int TRAINING_SECONDS = 25;

  private static final boolean WINDOWS = system("windows");
  private static final boolean MAC = system("mac");

  private final Path built = Path.of("sim-gui", "target");
  private final Path source = Path.of("sim-gui", "src", "main");
  private final Path out = built.resolve("installers");
  private final Path input = out.resolve("input");
  private final Path runtime = out.resolve("runtime");
  private final String version;

  private Installers(String version) {
    this.version = version;
  }

  public static void main(String[] args) throws Exception {
    if (!Files.exists(Path.of("sim-gui", "target", "halfwave.jar"))) {
      System.err.println("sim-gui/target/halfwave.jar: not there; build it first: mvn -q -DskipTests package");
      System.exit(2);
    }
    String kind = args.length > 0 ? args[0] : WINDOWS ? "msi" : MAC ? "dmg" : "deb";
    if (!Set.of("deb", "rpm", "msi", "exe", "dmg", "pkg", "none").contains(kind)) {
      System.err.println(kind + ": not a kind of package; allowed: deb, rpm, msi, exe, dmg, pkg, none");
      System.exit(2);
    }
    new Installers(version()).make(kind);
  }

  private static boolean system(String name) {
    return System.getProperty("os.name").toLowerCase(Locale.ROOT).contains(name);
  }

  private static String version() throws IOException {
    try (JarFile jar = new JarFile(Path.of("sim-gui", "target", "halfwave.jar").toFile())) {
      String written = jar.getManifest().getMainAttributes().getValue("Implementation-Version");
      // packages know only numbers; macOS wants the first one to be above zero
      String numbers = written.replace("-SNAPSHOT", "");
      return MAC && numbers.startsWith("0.") ? "1" + numbers.substring(1) : numbers;
    }
  }

  private void make(String kind) throws Exception {
    delete(out);
    Files.createDirectories(out);
    collect();
    link();
    Path image = image();
    archive();
    // the image took the runtime in before its archive was there
    Files.createDirectories(archivePlace(home(image)));
    Files.copy(
        archivePlace(runtime).resolve("classes.jsa"),
        archivePlace(home(image)).resolve("classes.jsa"),
        StandardCopyOption.REPLACE_EXISTING);
    Path zip = out.resolve(NAME + "-" + version + "-portable-" + platform() + ".zip");
    zip(image, zip);
    say(zip);
    if (!kind.equals("none")) {
      pack(kind, image);
    }
    delete(input);
    delete(runtime);
    delete(out.resolve("pack"));
    say(image);
  }

  private static String platform() {
    String os = WINDOWS ? "windows" : MAC ? "macos" : "linux";
    return os + "-" + System.getProperty("os.arch").toLowerCase(Locale.ROOT);
  }

  /** The jars, and the licences that stand in them. */
  private void collect() throws IOException {
    Files.createDirectories(input.resolve("lib"));
    // not every jar brings its own
    copy(source.resolve("installer").resolve("legal"), input.resolve("legal"));
    Files.copy(built.resolve("halfwave.jar"), input.resolve("halfwave.jar"));
    try (Stream<Path> jars = Files.list(built.resolve("lib"))) {
      for (Path jar : jars.sorted().toList()) {
        Files.copy(jar, input.resolve("lib").resolve(jar.getFileName()));
        legal(jar);
      }
    }
    Files.write(input.resolve("halfwave-classes.txt"), train());
  }

  private void legal(Path jar) throws IOException {
    Path folder = input.resolve("legal").resolve(jar.getFileName().toString().replace(".jar", ""));
    try (JarFile open = new JarFile(jar.toFile())) {
      for (var entry : open.stream().filter(e -> !e.isDirectory()).toList()) {
        String leaf = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
        if (leaf.toUpperCase(Locale.ROOT).matches(".*(LICEN[CS]E|NOTICE|COPYING|OFL).*") && !leaf.endsWith(".class")) {
          Files.createDirectories(folder);
          try (InputStream in = open.getInputStream(entry)) {
            Files.copy(in, folder.resolve(leaf), StandardCopyOption.REPLACE_EXISTING);
          }
        }
      }
    }
  }

  /** The classes that a start loads: of the window where there is a display, else of a command. */
  private List<String> train() throws IOException {
    Path list = out.resolve("classes.txt").toAbsolutePath();
    boolean display = WINDOWS || MAC || System.getenv("DISPLAY") != null;
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:off",
                "-XX:DumpLoadedClassList=" + list,
                // nothing of whoever builds gets into the window that is opened here
                "-Duser.home=" + out.toAbsolutePath(),
                "-jar",
                input.resolve("halfwave.jar").toString()));
    if (!display) {
      command.add("benches");
    }
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("XDG_CONFIG_HOME", out.resolve("home").toAbsolutePath().toString());
    builder.redirectOutput(out.resolve("training.log").toFile());
    Process process = builder.start();
    try {
      process.waitFor(TRAINING_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new IOException(e);
    } finally {
      process.destroy();
    }
    process.onExit().join();
    List<String> classes = Files.readAllLines(list);
    if (classes.size() < 500) {
      throw new IOException("the training run loaded only " + classes.size() + " classes");
    }
    delete(out.resolve("home"));
    delete(out.resolve(".java"));
    Files.delete(out.resolve("training.log"));
    Files.delete(list);
    return classes;
  }

  private void link() {
    run(
        "jlink",
        "--add-modules",
        MODULES,
        "--strip-debug",
        "--no-header-files",
        "--no-man-pages",
        "--compress=2",
        "--output",
        runtime.toString());
  }

  /** The classes of the runtime itself: this archive works wherever the runtime is put. */
  private void archive() throws Exception {
    start(
        runtime.resolve("bin").resolve(WINDOWS ? "java.exe" : "java").toString(),
        "-Xshare:dump",
        "-Xlog:disable",
        "-XX:SharedClassListFile=" + input.resolve("halfwave-classes.txt"));
  }

  private static Path archivePlace(Path home) {
    return home.resolve(WINDOWS ? "bin" : "lib").resolve("server");
  }

  private static Path home(Path image) {
    return MAC
        ? image.resolve("Contents/runtime/Contents/Home")
        : image.resolve(WINDOWS ? "runtime" : "lib/runtime");
  }

  private Path image() throws IOException {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "--type", "app-image",
                "--name", NAME,
                "--app-version", version,
                "--vendor", "Halfwave",
                "--description", "Flame rectification, simulated from the physics up",
                "--input", input.toString(),
                "--main-jar", "halfwave.jar",
                "--runtime-image", runtime.toString(),
                "--icon", icon().toString(),
                "--java-options", WINDOW_OPTIONS,
                "--dest", out.toString()));
    Path command = out.resolve("command.properties");
    Files.writeString(
        command, "java-options=-XX:+TieredCompilation\n" + (WINDOWS ? "win-console=true\n" : ""));
    arguments.addAll(List.of("--add-launcher", COMMAND + "=" + command));
    run("jpackage", arguments.toArray(String[]::new));
    Files.delete(command);
    return out.resolve(MAC ? NAME + ".app" : NAME);
  }

  private void pack(String kind, Path image) throws IOException {
    Path pack = Files.createDirectories(out.resolve("pack"));
    Path association = pack.resolve("association.properties");
    String icon = icon().toString().replace('\\', '/');
    Files.writeString(
        association,
        "extension=halfwave\nmime-type=application/x-halfwave+json\ndescription=Halfwave file\nicon=" + icon + "\n");
    Path application = image;
    if (kind.equals("deb")) {
      // a package knows where it will be, so the program's own classes can be archived as well
      application = pack.resolve(NAME);
      copy(image, application);
      for (String launcher : List.of(NAME, COMMAND)) {
        Path settings = application.resolve("lib/app/" + launcher + ".cfg");
        Files.writeString(
            settings,
            Files.readString(settings)
                .replace("[JavaOptions]\n", "[JavaOptions]\njava-options=-XX:SharedArchiveFile=$APPDIR/halfwave.jsa\n"));
      }
    }
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "--type", kind,
                "--name", NAME,
                "--app-version", version,
                "--vendor", "Halfwave",
                "--description", "Flame rectification, simulated from the physics up",
                "--app-image", application.toString(),
                "--resource-dir", source.resolve("installer").resolve(kind).toString(),
                "--file-associations", association.toString(),
                "--dest", out.toString()));
    if (kind.equals("deb") || kind.equals("rpm")) {
      arguments.addAll(
          List.of("--linux-shortcut", "--linux-menu-group", "Education;Science", "--linux-app-category", "education"));
    }
    if (kind.equals("deb")) {
      arguments.addAll(List.of("--linux-deb-maintainer", "halfwave@localhost"));
    }
    if (WINDOWS) {
      arguments.addAll(List.of("--win-menu", "--win-shortcut", "--win-dir-chooser", "--win-per-user-install"));
    }
    run("jpackage", arguments.toArray(String[]::new));
    try (Stream<Path> made = Files.list(out)) {
      made.filter(p -> p.toString().endsWith("." + kind)).forEach(Installers::say);
    }
  }

  /** In the form that this system's packages want. */
  private Path icon() throws IOException {
    Path icons = source.resolve("resources/halfwave/gui/swing");
    if (WINDOWS) {
      return Files.write(out.resolve("halfwave.ico"), ico(Files.readAllBytes(icons.resolve("icon-256.png"))));
    }
    if (MAC) {
      return Files.write(
          out.resolve("halfwave.icns"),
          icns(
              Map.of(
                  "ic08", Files.readAllBytes(icons.resolve("icon-256.png")),
                  "ic09", Files.readAllBytes(icons.resolve("icon-512.png")))));
    }
    return icons.resolve("icon-256.png");
  }

  /** One PNG of 256 pixels: width and height 0 mean 256. */
  private static byte[] ico(byte[] png) {
    byte[] head = {0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 1, 0, 32, 0, 0, 0, 0, 0, 22, 0, 0, 0};
    for (int k = 0; k < 4; k++) {
      head[14 + k] = (byte) (png.length >> 8 * k);
    }
    byte[] all = Arrays.copyOf(head, head.length + png.length);
    System.arraycopy(png, 0, all, head.length, png.length);
    return all;
  }

  private static byte[] icns(Map<String, byte[]> pictures) throws IOException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    DataOutputStream to = new DataOutputStream(body);
    for (var picture : pictures.entrySet()) {
      to.writeBytes(picture.getKey());
      to.writeInt(8 + picture.getValue().length);
      to.write(picture.getValue());
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    DataOutputStream file = new DataOutputStream(all);
    file.writeBytes("icns");
    file.writeInt(8 + body.size());
    body.writeTo(file);
    return all.toByteArray();
  }

  private static void run(String tool, String... arguments) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream both = new PrintStream(said, true, StandardCharsets.UTF_8);
    int status = ToolProvider.findFirst(tool).orElseThrow().run(both, both, arguments);
    if (status != 0) {
      System.err.println(tool + " " + String.join(" ", arguments));
      System.err.println(said.toString(StandardCharsets.UTF_8));
      System.exit(1);
    }
  }

  private static void start(String... command) throws Exception {
    int status = new ProcessBuilder(command).inheritIO().start().waitFor();
    if (status != 0) {
      throw new IOException(String.join(" ", command) + ": status " + status);
    }
  }

  private static void say(Path made) {
    System.out.println(made.toString());
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        Files.copy(one, to.resolve(from.relativize(one).toString()), StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  /** With the rights of the files, which the class library's simpler zip would lose. */
  private static void zip(Path folder, Path zip) throws IOException {
    Map<String, String> how = Map.of("create", "true", "enablePosixFileAttributes", WINDOWS ? "false" : "true");
    try (FileSystem inside = FileSystems.newFileSystem(zip, how);
        Stream<Path> all = Files.walk(folder)) {
      for (Path one : all.toList()) {
        Path there = inside.getPath("/" + folder.getParent().relativize(one).toString().replace('\\', '/'));
        if (Files.isDirectory(one)) {
          Files.createDirectories(there);
        } else {
          try (OutputStream to = Files.newOutputStream(there)) {
            Files.copy(one, to);
          }
        }
        if (!WINDOWS) {
          Set<PosixFilePermission> rights = Files.getPosixFilePermissions(one);
          Files.setPosixFilePermissions(there, rights);
        }
      }
    }
  }

  private static void delete(Path path) throws IOException {
    if (!Files.exists(path)) {
      return;
    }
    try (Stream<Path> all = Files.walk(path)) {
      for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(one);
      }
    }
  }
}
