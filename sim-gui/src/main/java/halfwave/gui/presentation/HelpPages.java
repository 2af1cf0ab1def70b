package halfwave.gui.presentation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.text.Collator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** All pages of help in one language. */
public final class HelpPages {

  private static final Map<String, List<String>> KEYS =
      inOrder(
          Map.entry(
              "help.keys-clock",
              List.of("key.play", "key.step", "key.faster", "key.call", "key.power")),
          Map.entry("help.keys-meter", List.of("key.meter", "key.function")),
          Map.entry("help.keys-seeing", List.of("key.drawing", "key.charts", "key.cursor")),
          Map.entry("help.keys-window", List.of("key.help", "key.panels", "key.tabs", "key.why")),
          Map.entry("help.keys-files", List.of("key.undo", "key.files")),
          Map.entry(
              "help.keys-class",
              List.of("key.lesson", "key.seal", "key.projector", "key.editor", "key.quiz")));

  private final List<HelpPage> pages = new ArrayList<>();
  private final Wording words;

  private HelpPages(Wording words) {
    this.words = words;
  }

  @SafeVarargs
  private static Map<String, List<String>> inOrder(Map.Entry<String, List<String>>... entries) {
    Map<String, List<String>> made = new LinkedHashMap<>();
    for (Map.Entry<String, List<String>> entry : entries) {
      made.put(entry.getKey(), entry.getValue());
    }
    return made;
  }

  /**
   * Reads them.
   *
   * @param words in which language
   * @param version of the program, where it is known
   */
  public static HelpPages of(Wording words, @Nullable String version) {
    HelpPages made = new HelpPages(words);
    made.files("help.group-start", HelpTopics.START);
    made.files("help.group-panels", HelpTopics.PANELS);
    made.files("help.group-circuit", HelpTopics.CIRCUIT);
    String more = "help.group-more";
    made.add("keyboard", more, made.keyboard());
    made.add("glossary", more, made.sorted(made.file("glossary")));
    made.files(more, List.of("limits", "cautions"));
    made.add("about", more, made.about(version));
    made.files(more, List.of("licences"));
    for (String document : HelpTopics.DOCUMENTS) {
      made.add(
          document, "help.group-documents", read("documents/" + document + ".md").orElseThrow());
    }
    return made;
  }

  private void files(String group, List<String> topics) {
    topics.forEach(topic -> add(topic, group, file(topic)));
  }

  private void add(String topic, String group, String markup) {
    pages.add(HelpPage.of(topic, words.text(group), markup));
  }

  /** In English where the language has no such page. */
  private String file(String topic) {
    return file(words.locale(), topic)
        .or(() -> file(Locale.ENGLISH, topic))
        .orElseThrow(() -> new IllegalStateException("no page " + topic));
  }

  private static Optional<String> file(Locale locale, String topic) {
    return read("help/" + locale.getLanguage() + "/" + topic + ".md");
  }

  private static Optional<String> read(String path) {
    try (InputStream in = HelpPages.class.getResourceAsStream(path)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /** Items in the order of the language, so that a translator need not move them. */
  private String sorted(String markup) {
    Collator collator = Collator.getInstance(words.locale());
    List<String> blocks = new ArrayList<>(Arrays.asList(HelpMarkup.blocks(markup)));
    List<String> items =
        blocks.stream()
            .filter(b -> b.startsWith("- "))
            .sorted(Comparator.comparing(HelpPages::term, collator))
            .toList();
    blocks.removeAll(items);
    return String.join("\n\n", blocks) + "\n\n" + String.join("\n", items);
  }

  /** What an item of the glossary explains. */
  static String term(String item) {
    return item.replaceFirst("^- \\*\\*(.+?)\\*\\*.*", "$1");
  }

  private String keyboard() {
    StringBuilder made = new StringBuilder("# " + words.text("help.keys-title"));
    KEYS.forEach(
        (heading, keys) -> {
          made.append("\n\n## ").append(words.text(heading));
          for (String key : keys) {
            made.append("\n- ").append(words.text(key).replaceFirst("^([^:]+):", "**$1**:"));
          }
        });
    return made.toString();
  }

  private String about(@Nullable String version) {
    String name = version == null ? "Halfwave" : "Halfwave " + version;
    return "# "
        + words.text("help.about-title")
        + "\n\n"
        + words.text("help.about", name)
        + "\n\n"
        + words.text("help.about-more");
  }

  /** What the links and pictures of a document count from. */
  public static URL base() {
    return Objects.requireNonNull(HelpPages.class.getResource("documents/user-guide.md"));
  }

  /** The page that a link in a document leads to, if it is one that the program has. */
  public static Optional<String> linked(String link) {
    String topic = link.replaceFirst("#.*", "").replaceFirst("\\.md$", "");
    return HelpTopics.DOCUMENTS.contains(topic) ? Optional.of(topic) : Optional.empty();
  }

  /** All, in the order of the list. */
  public List<HelpPage> all() {
    return List.copyOf(pages);
  }

  /** Those in which all words stand that were typed; all where nothing was typed. */
  public List<HelpPage> found(String typed) {
    return pages.stream().filter(page -> page.holds(typed)).toList();
  }

  /**
   * The first page in whose title all words stand that were typed; none where nothing was typed.
   */
  public Optional<HelpPage> titled(String typed) {
    return pages.stream().filter(page -> page.titled(typed)).findFirst();
  }

  /** One page, or the first where there is no such topic. */
  public HelpPage page(String topic) {
    return pages.stream().filter(p -> p.topic().equals(topic)).findFirst().orElse(pages.get(0));
  }
}
