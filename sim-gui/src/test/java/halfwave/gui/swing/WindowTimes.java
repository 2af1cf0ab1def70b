package halfwave.gui.swing;

import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.swing.bench.BenchParts;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.RodGrip;
import halfwave.sequence.Moment;
import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Measures how the window feels: start, drag, longest block of the event thread, memory. It asserts
 * nothing, for a busy machine gives other numbers, and its name keeps it out of the checks. See
 * DEVELOPERS.md for the command and docs/benchmarks.md for results.
 */
class WindowTimes {

  private static final int STARTS = 7;
  private static final int DRAGS = 600;

  /** As {@code Installers.java} has them. */
  private static final List<String> PACKAGE =
      List.of(
          "-XX:+UseSerialGC",
          "-XX:TieredStopAtLevel=1",
          "-Xms48m",
          "-Xmn20m",
          "-XX:MinHeapFreeRatio=10",
          "-XX:MaxHeapFreeRatio=30");

  @TempDir private Path folder;

  /** From the command to the first picture: the plain jar, and as the package starts it. */
  @Test
  void start() throws Exception {
    starts("start of the plain jar", List.of(), STARTS);
    starts("start with an archive of classes", archived(List.of()), STARTS);
    starts("start as the package does it", archived(PACKAGE), STARTS);
  }

  private List<String> archived(List<String> options) throws Exception {
    Path archive = folder.resolve("halfwave" + options.size() + ".jsa");
    List<String> writing = new ArrayList<>(options);
    writing.add("-XX:ArchiveClassesAtExit=" + archive);
    starts("the start that writes the archive", writing, 1);
    List<String> reading = new ArrayList<>(options);
    reading.addAll(List.of("-XX:SharedArchiveFile=" + archive, "-Xshare:auto"));
    return reading;
  }

  private void starts(String what, List<String> options, int count) throws Exception {
    Robot robot = new Robot();
    List<Double> millis = new ArrayList<>();
    List<Double> megabytes = new ArrayList<>();
    // a small piece of the drawing: to look at the whole screen takes a core from the program
    var whole = Toolkit.getDefaultToolkit().getScreenSize();
    var piece = new java.awt.Rectangle(whole.width / 4, whole.height / 3, 160, 120);
    for (int k = 0; k < count; k++) {
      Path home = Files.createDirectories(folder.resolve("home"));
      new SettingsFile(home.resolve("halfwave").resolve("settings.json")).write(OpenWindow.PLAIN);
      List<String> command =
          new ArrayList<>(
              List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
      command.addAll(options);
      command.addAll(
          List.of("-jar", Path.of("target", "halfwave.jar").toAbsolutePath().toString()));
      ProcessBuilder builder = new ProcessBuilder(command);
      builder.environment().put("XDG_CONFIG_HOME", home.toString());
      builder.redirectErrorStream(true).redirectOutput(folder.resolve("out").toFile());
      long before = System.nanoTime();
      Process process = builder.start();
      while (plain(robot.createScreenCapture(piece))) {
        Thread.sleep(5);
      }
      millis.add((System.nanoTime() - before) / 1e6);
      Thread.sleep(5000);
      megabytes.add(resident(process.pid()));
      process.destroy();
      process.waitFor();
      while (!plain(robot.createScreenCapture(piece))) {
        Thread.sleep(50);
      }
    }
    print(what + ", to first paint, ms", millis);
    print(what + ", resident after 5 s, MB", megabytes);
  }

  /** A drawing has many colours. A bare frame has one or two. */
  private static boolean plain(BufferedImage image) {
    java.util.Set<Integer> colors = new java.util.HashSet<>();
    for (int y = 0; y < image.getHeight(); y += 3) {
      for (int x = 0; x < image.getWidth(); x += 3) {
        colors.add(image.getRGB(x, y));
      }
    }
    return colors.size() < 12;
  }

  private static double resident(long pid) throws IOException {
    Path status = Path.of("/proc", Long.toString(pid), "status");
    if (!Files.exists(status)) {
      return Double.NaN;
    }
    return Files.readAllLines(status).stream()
        .filter(l -> l.startsWith("VmRSS:"))
        .mapToDouble(l -> Double.parseDouble(l.replaceAll("\\D", "")) / 1024)
        .findFirst()
        .orElse(Double.NaN);
  }

  /** From an event of the hand to the painted picture of the bench that it led to. */
  @Test
  void drag() throws Exception {
    try (OpenWindow open = OpenWindow.plain(folder)) {
      DrawingPanel panel = new Hand(open).find(DrawingPanel.class, "drawing");
      Point grip = OpenWindow.onScreen(() -> rod(panel));
      var window = SwingUtilities.getWindowAncestor(panel);
      Point from = SwingUtilities.convertPoint(panel, grip, window);
      List<Double> millis = new ArrayList<>();
      Hand.mouse(window, from, MouseEvent.MOUSE_PRESSED, MouseEvent.BUTTON1, 1);
      Random random = new Random(1);
      for (int k = 0; k < DRAGS; k++) {
        Point to = new Point(from.x, from.y + 5 + random.nextInt(60));
        var painted = new CountDownLatch(1);
        Moment before = open.shown().moment();
        Runnable end =
            OpenWindow.onScreen(
                () ->
                    open.workbench()
                        .subscribe(
                            state -> {
                              if (state.moment() != before) {
                                EventQueue.invokeLater(
                                    () -> {
                                      RepaintManager.currentManager(panel).paintDirtyRegions();
                                      Toolkit.getDefaultToolkit().sync();
                                      painted.countDown();
                                    });
                              }
                            }));
        long began = System.nanoTime();
        Hand.mouse(window, to, MouseEvent.MOUSE_DRAGGED, MouseEvent.BUTTON1, 0);
        if (painted.await(5, TimeUnit.SECONDS)) {
          millis.add((System.nanoTime() - began) / 1e6);
        }
        OpenWindow.onScreen(
            () -> {
              end.run();
              return null;
            });
      }
      Hand.mouse(window, from, MouseEvent.MOUSE_RELEASED, MouseEvent.BUTTON1, 1);
      open.settle();
      print("drag of the rod to the picture, ms", millis);
    }
  }

  private static Point rod(DrawingPanel panel) {
    BenchDrawing drawing = BenchParts.drawing(panel);
    var bounds = drawing.shape(DrawnPart.ROD).getBounds();
    for (int x = bounds.x; x < bounds.x + bounds.width; x++) {
      Point p = new Point(x, (int) bounds.getCenterY());
      if (drawing.gripAt(p).filter(g -> g == RodGrip.BODY).isPresent()) {
        return p;
      }
    }
    throw new AssertionError("no grip of the rod");
  }

  /** Random hands with the clock running: each event of the event thread, and the memory. */
  @Test
  void use() throws Exception {
    Waits waits = new Waits();
    Toolkit.getDefaultToolkit().getSystemEventQueue().push(waits);
    long minutes = Long.getLong("halfwave.minutes", 5);
    try (OpenWindow open = OpenWindow.with(folder, OpenWindow.PLAIN.withMotion(true))) {
      RandomHands hands = new RandomHands(open, folder, 2);
      new Hand(open).takeKeyboard();
      open.want(new Intent.Play(true));
      waits.clear();
      for (long minute = 1; minute <= minutes; minute++) {
        long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(1);
        while (System.nanoTime() < end) {
          hands.anything();
        }
        hands.closeDialogs();
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
            "after %d min of random use: heap %.0f MB, resident %.0f MB, %d acts in the history%n",
            minute,
            (runtime.totalMemory() - runtime.freeMemory()) / 1e6,
            resident(ProcessHandle.current().pid()),
            open.shown().history().done().size());
      }
      System.out.println(waits.text());
      waits.longest().forEach(System.out::println);
    }
  }

  /** How long the event thread makes another look or language, and what is opened first. */
  @Test
  void changes() throws Exception {
    try (OpenWindow open = OpenWindow.plain(folder)) {
      for (String menu :
          List.of("menu.keys", "menu.forecast", "menu.take", "menu.practise", "menu.desk")) {
        print(menu + ", first time, ms", List.of(chosen(open, menu)));
        OpenWindow.onScreen(
            () -> {
              for (java.awt.Window window : java.awt.Window.getWindows()) {
                window.setVisible(window == open.frame());
              }
              return null;
            });
        print(menu + ", again, ms", List.of(chosen(open, menu)));
      }
      List<Double> looks = new ArrayList<>();
      List<Double> languages = new ArrayList<>();
      for (int k = 0; k < STARTS; k++) {
        looks.add(chosen(open, k % 2 == 0 ? "menu.dark" : "menu.light"));
        languages.add(chosen(open, k % 2 == 0 ? "language.es" : "language.en"));
      }
      print("another look with all side windows, ms", looks);
      print("another language with all side windows, ms", languages);
    }
  }

  private static double chosen(OpenWindow open, String name) {
    open.settle();
    double millis =
        OpenWindow.onScreen(
            () -> {
              long began = System.nanoTime();
              Hand.items(open.frame().getJMenuBar())
                  .filter(i -> name.equals(i.getName()))
                  .findFirst()
                  .orElseThrow()
                  .doClick(0);
              RepaintManager.currentManager(open.frame()).validateInvalidComponents();
              RepaintManager.currentManager(open.frame()).paintDirtyRegions();
              return (System.nanoTime() - began) / 1e6;
            });
    open.settle();
    return millis;
  }

  private static void print(String what, List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int n = sorted.size();
    System.out.printf(
        "%s: n %d, p50 %.1f, p90 %.1f, p99 %.1f, most %.1f%n",
        what,
        n,
        sorted.get(n / 2),
        sorted.get(Math.min(n - 1, n * 9 / 10)),
        sorted.get(Math.min(n - 1, n * 99 / 100)),
        sorted.get(n - 1));
  }

  /**
   * Times how long the event thread does not listen: from one event taken out of the queue to the
   * next that is asked for. While a dialog is open its own events are asked for within another.
   */
  private static final class Waits extends EventQueue {
    private static final int LONGEST = 12;

    /** More than this hangs, and is counted as this (ms). */
    private static final int MOST = 60_000;

    /**
     * How many took so many tenths of a millisecond: a list of all would be the memory's growth.
     */
    private final int[] tenths = new int[10 * MOST + 1];

    private final List<Wait> all = new ArrayList<>();
    private long began;
    private String event = "";

    private record Wait(double millis, String event) {}

    @Override
    public AWTEvent getNextEvent() throws InterruptedException {
      if (began != 0) {
        ended((System.nanoTime() - began) / 1e6);
      }
      AWTEvent next = super.getNextEvent();
      began = System.nanoTime();
      event = next.toString();
      return next;
    }

    private void ended(double took) {
      synchronized (all) {
        tenths[(int) Math.min(10 * MOST, Math.round(10 * took))]++;
        all.add(new Wait(took, event));
        if (all.size() > 2 * LONGEST) {
          all.sort(Comparator.comparingDouble(Wait::millis).reversed());
          all.subList(LONGEST, all.size()).clear();
        }
      }
    }

    void clear() {
      synchronized (all) {
        Arrays.fill(tenths, 0);
        all.clear();
      }
    }

    String text() {
      synchronized (all) {
        long n = Arrays.stream(tenths).asLongStream().sum();
        return "an event of the event thread, ms: n %d, p50 %.1f, p90 %.1f, p99 %.1f, p99.9 %.1f"
            .formatted(n, share(n, 0.5), share(n, 0.9), share(n, 0.99), share(n, 0.999));
      }
    }

    private double share(long n, double ratio) {
      long left = (long) (n * ratio);
      int at = 0;
      while (left >= tenths[at]) {
        left -= tenths[at++];
      }
      return at / 10.0;
    }

    List<String> longest() {
      synchronized (all) {
        all.sort(Comparator.comparingDouble(Wait::millis).reversed());
        return all.stream()
            .limit(LONGEST)
            .map(w -> "%.0f ms: %s".formatted(w.millis, w.event))
            .toList();
      }
    }
  }
}
