package halfwave.gui.presentation;

import java.util.List;
import java.util.Map;

/** What there is help for, and which page belongs to what has the keyboard. */
public final class HelpTopics {

  /** What is shown when nothing better is known. */
  public static final String FIRST = "first-ten-minutes";

  static final List<String> START = List.of(FIRST, "with-a-class");

  private static final List<String> CHARTS =
      List.of("timeline", "waveforms", "voltage-ladder", "what-if", "position-map", "history");

  private static final List<String> TABS =
      List.of("condition", "why", "faults", "work", "part", "lesson", "evidence");

  static final List<String> PANELS =
      List.of(
          "drawing",
          "meter",
          "board",
          "timeline",
          "waveforms",
          "voltage-ladder",
          "what-if",
          "position-map",
          "history",
          "condition",
          "why",
          "faults",
          "work",
          "part",
          "lesson",
          "evidence",
          "match",
          "forecast",
          "quiz",
          "desk",
          "editor",
          "export");

  static final List<String> CIRCUIT =
      List.of(
          "circuit-rod",
          "circuit-ceramic",
          "circuit-sense-lead",
          "circuit-connector",
          "circuit-burner-face",
          "circuit-flame",
          "circuit-ground-strap",
          "circuit-board",
          "circuit-igniter",
          "circuit-gas-valve",
          "circuit-meter");

  /** Files of the folder {@code docs} that are read inside the program, in English only. */
  static final List<String> DOCUMENTS =
      List.of(
          "user-guide",
          "instructors-guide",
          "quiz-guide",
          "model",
          "validation",
          "library-guide",
          "file-formats",
          "installing");

  /** By the first word of a component's name. */
  private static final Map<String, String> NAMED =
      Map.ofEntries(
          Map.entry("bar", FIRST),
          Map.entry("drawing", "drawing"),
          Map.entry("meter", "meter"),
          Map.entry("function", "meter"),
          Map.entry("board", "board"),
          Map.entry("strip", "timeline"),
          Map.entry("wave", "waveforms"),
          Map.entry("ladder", "voltage-ladder"),
          Map.entry("whatif", "what-if"),
          Map.entry("map", "position-map"),
          Map.entry("history", "history"),
          Map.entry("match", "match"),
          Map.entry("forecast", "forecast"),
          Map.entry("quiz", "quiz"),
          Map.entry("visit", "quiz"),
          Map.entry("practice", "quiz"),
          Map.entry("desk", "desk"),
          Map.entry("seal", "with-a-class"),
          Map.entry("projector", "with-a-class"));

  private HelpTopics() {}

  /**
   * The topic of a component.
   *
   * @param name of the component
   * @param tab which of its tabs is in front, where it has tabs
   * @return the topic, or an empty text where the name says nothing
   */
  public static String of(String name, int tab) {
    if (name.equals("tabs")) {
      return TABS.get(tab);
    }
    if (name.equals("charts")) {
      return CHARTS.get(tab);
    }
    return NAMED.getOrDefault(name.split("\\.", 2)[0], "");
  }
}
