package halfwave.gui.presentation;

import halfwave.display.UnitSystem;
import halfwave.paper.PaperSize;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What the window remembers from one start to the next.
 *
 * @param language language tag, or null: that of the system
 * @param units the units
 * @param dark whether the dark look is on
 * @param motion whether the flame moves, or null: as the desktop has it
 * @param textRatio size of type over the usual (1)
 * @param cautionsSeen whether the cautions of the first start were read
 * @param sheet what is printed on, or null: what offices of the country use
 * @param place where the window is and what is in front in it
 * @param recent bench files, the latest first
 * @param folder where a file of any kind was last opened or saved, or null
 * @param lessons what concerns demonstrations
 */
public record Settings(
    @Nullable String language,
    UnitSystem units,
    boolean dark,
    @Nullable Boolean motion,
    double textRatio,
    boolean cautionsSeen,
    @Nullable PaperSize sheet,
    Place place,
    List<Path> recent,
    @Nullable Path folder,
    Lessons lessons) {

  private static final int MOST_RECENT = 8;

  /**
   * Where the window is and what is in front in it.
   *
   * @param frame x, y, width and height of the window, or null
   * @param lower height of the charts, or null: nobody has moved the divider (px)
   * @param tab which tab, the first is 0
   * @param chart which chart, the first is 0
   */
  public record Place(@Nullable List<Integer> frame, @Nullable Integer lower, int tab, int chart) {

    /** Before anyone moved anything. */
    public static final Place FIRST = new Place(null, null, 0, 0);

    /** Takes a copy. */
    public Place {
      frame = frame == null ? null : List.copyOf(frame);
    }

    /** With the window there. */
    public static Place at(List<Integer> frame) {
      return new Place(frame, null, 0, 0);
    }
  }

  /**
   * What is remembered of demonstrations.
   *
   * @param frame x, y, width and height of the editor's window, or null
   * @param recent files, the latest first
   */
  public record Lessons(@Nullable List<Integer> frame, List<Path> recent) {

    /** Nothing yet. */
    public static final Lessons NONE = new Lessons(null, List.of());

    /** Takes copies. */
    public Lessons {
      frame = frame == null ? null : List.copyOf(frame);
      recent = List.copyOf(recent);
    }

    /** With the editor's window elsewhere. */
    public Lessons withFrame(List<Integer> other) {
      return new Lessons(other, recent);
    }

    /** With one more file that was opened or saved. */
    public Lessons withRecent(Path file) {
      return new Lessons(frame, latest(file, recent));
    }
  }

  /** Sizes of type to choose from. */
  public static final List<Double> TEXT_RATIOS = List.of(1.0, 1.25, 1.5, 2.0);

  /** Before anyone chose anything. */
  public static final Settings FIRST =
      new Settings(
          null,
          UnitSystem.METRIC,
          false,
          null,
          1,
          false,
          null,
          Place.FIRST,
          List.of(),
          null,
          Lessons.NONE);

  /** Takes copies. */
  public Settings {
    recent = List.copyOf(recent);
  }

  /** The folder that a file was last opened in or saved to, or null: none was yet. */
  public @Nullable Path lastFolder() {
    if (folder != null) {
      return folder;
    }
    return recent.isEmpty() ? null : recent.get(0).getParent();
  }

  /** Whether the flame moves, where a desktop has its programs move so. */
  public boolean moves(boolean desktop) {
    return motion == null ? desktop : motion;
  }

  /** In another language. */
  public Settings withLanguage(String other) {
    return with(d -> d.language = other);
  }

  /** With other units. */
  public Settings withUnits(UnitSystem other) {
    return with(d -> d.units = other);
  }

  /** Dark or light. */
  public Settings withDark(boolean other) {
    return with(d -> d.dark = other);
  }

  /** With a flame that moves, or one that stands. */
  public Settings withMotion(boolean other) {
    return with(d -> d.motion = other);
  }

  /** With larger or smaller type (1). */
  public Settings withTextRatio(double other) {
    return with(d -> d.textRatio = other);
  }

  /** After the cautions were read. */
  public Settings withCautionsSeen() {
    return with(d -> d.cautionsSeen = true);
  }

  /** With other sheets to print on. */
  public Settings withSheet(PaperSize other) {
    return with(d -> d.sheet = other);
  }

  /** With the window elsewhere, or with something else in front. */
  public Settings withPlace(Place other) {
    return with(d -> d.place = other);
  }

  /** With one more file that was opened or saved. */
  public Settings withRecent(Path file) {
    return with(
        d -> {
          d.recent = latest(file, recent);
          d.folder = file.getParent();
        });
  }

  /** After a file was opened in or saved to that folder. */
  public Settings withFolder(Path other) {
    return with(d -> d.folder = other);
  }

  /** With something else remembered of demonstrations. */
  public Settings withLessons(Lessons other) {
    return with(d -> d.lessons = other);
  }

  private Settings with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.made();
  }

  /** Settings that are being changed: each change names only what it changes. */
  private static final class Draft {
    private @Nullable String language;
    private UnitSystem units;
    private boolean dark;
    private @Nullable Boolean motion;
    private double textRatio;
    private boolean cautionsSeen;
    private @Nullable PaperSize sheet;
    private Place place;
    private List<Path> recent;
    private @Nullable Path folder;
    private Lessons lessons;

    private Draft(Settings from) {
      language = from.language;
      units = from.units;
      dark = from.dark;
      motion = from.motion;
      textRatio = from.textRatio;
      cautionsSeen = from.cautionsSeen;
      sheet = from.sheet;
      place = from.place;
      recent = from.recent;
      folder = from.folder;
      lessons = from.lessons;
    }

    private Settings made() {
      return new Settings(
          language,
          units,
          dark,
          motion,
          textRatio,
          cautionsSeen,
          sheet,
          place,
          recent,
          folder,
          lessons);
    }
  }

  private static List<Path> latest(Path file, List<Path> before) {
    List<Path> files = new ArrayList<>(before);
    files.remove(file);
    files.add(0, file);
    return files.subList(0, Math.min(MOST_RECENT, files.size()));
  }
}
