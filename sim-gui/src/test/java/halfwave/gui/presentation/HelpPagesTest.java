package halfwave.gui.presentation;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.UnitSystem;
import java.text.Collator;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Help is whole in both languages, found by its words, and safe to show as HTML. */
class HelpPagesTest {

  private static final HelpPages ENGLISH = pages("en");
  private static final HelpPages SPANISH = pages("es");

  private static HelpPages pages(String language) {
    return HelpPages.of(Wording.of(Locale.forLanguageTag(language), UnitSystem.METRIC), null);
  }

  /** Pages that are written in each language; documents are in English. */
  static List<HelpPage> english() {
    return ENGLISH.all().stream().filter(p -> !HelpTopics.DOCUMENTS.contains(p.topic())).toList();
  }

  static List<HelpPages> languages() {
    return List.of(ENGLISH, SPANISH);
  }

  private static long starting(HelpPage page, String with) {
    return Arrays.stream(HelpMarkup.blocks(page.markup())).filter(b -> b.startsWith(with)).count();
  }

  private static int words(HelpPage page) {
    return page.text().split("\\s+").length;
  }

  @Test
  void thereAreAllTopicsOnceInTheSameOrder() {
    assertThat(SPANISH.all()).extracting(HelpPage::topic).isEqualTo(topics(ENGLISH.all()));
    assertThat(new HashSet<>(topics(ENGLISH.all()))).hasSameSizeAs(ENGLISH.all());
    assertThat(ENGLISH.all()).hasSizeGreaterThan(33);
  }

  private static List<String> topics(List<HelpPage> pages) {
    return pages.stream().map(HelpPage::topic).toList();
  }

  @ParameterizedTest
  @MethodSource("english")
  void bothLanguagesSayAsMuch(HelpPage english) {
    HelpPage spanish = SPANISH.page(english.topic());
    assertThat(spanish.topic()).isEqualTo(english.topic());
    assertThat(starting(spanish, "# ")).isEqualTo(1).isEqualTo(starting(english, "# "));
    assertThat(starting(spanish, "## ")).as("headings").isEqualTo(starting(english, "## "));
    assertThat(spanish.text()).isNotEqualTo(english.text());
    // the glossary may need a word in one language that the other does not
    assertThat(starting(spanish, "- "))
        .isBetween(starting(english, "- "), starting(english, "- ") + 1);
    assertThat(words(spanish))
        .isBetween((int) (0.7 * words(english)), (int) (1.5 * words(english)));
  }

  @ParameterizedTest
  @MethodSource("languages")
  void noPageIsEmptyAndNoneIsALecture(HelpPages pages) {
    for (HelpPage page : pages.all()) {
      assertThat(page.title()).as(page.topic()).isNotBlank();
      assertThat(words(page)).as(page.topic()).isGreaterThan(30);
      boolean panel = HelpTopics.PANELS.contains(page.topic());
      assertThat(panel && words(page) > 170).as("%s is too long", page.topic()).isFalse();
      assertThat(page.text()).as(page.topic()).doesNotContain("**", "\n# ");
    }
    assertThat(pages.all()).extracting(HelpPage::title).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everyKeyTextStandsOnTheKeyboardPage(HelpPages pages) {
    boolean spanish = pages == SPANISH;
    var bundle =
        java.util.ResourceBundle.getBundle(
            Wording.BUNDLE, spanish ? Locale.forLanguageTag("es") : Locale.ROOT);
    String page = pages.page("keyboard").text();
    for (String key : bundle.keySet()) {
      if (key.startsWith("key.")) {
        assertThat(page).as(key).contains(bundle.getString(key));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"en", "es"})
  void theGlossaryIsInTheOrderOfItsLanguage(String language) {
    List<String> terms =
        Arrays.stream(HelpMarkup.blocks(pages(language).page("glossary").markup()))
            .filter(b -> b.startsWith("- "))
            .map(HelpPages::term)
            .toList();
    assertThat(terms)
        .hasSizeGreaterThanOrEqualTo(40)
        .doesNotHaveDuplicates()
        .isSortedAccordingTo(Collator.getInstance(Locale.forLanguageTag(language)));
  }

  @ParameterizedTest
  @CsvSource({"ceramica,circuit-ceramic", "CERÁMICA grietas,circuit-ceramic", "tierra,glossary"})
  void wordsAreFoundWithoutAccentsAndCapitals(String typed, String topic) {
    assertThat(topics(SPANISH.found(typed))).contains(topic);
  }

  @Test
  void allWordsHaveToBeThere() {
    assertThat(topics(ENGLISH.found("ground strap"))).contains("circuit-ground-strap");
    assertThat(ENGLISH.found("ground zzz")).isEmpty();
    assertThat(ENGLISH.found("  ")).isEqualTo(ENGLISH.all());
  }

  @Test
  void wordsInATitleComeFirst() {
    assertThat(SPANISH.titled("ceramica")).contains(SPANISH.page("circuit-ceramic"));
    assertThat(SPANISH.titled("sílice")).isEmpty();
    assertThat(SPANISH.titled(" ")).isEmpty();
  }

  @Test
  void plainTextKeepsItsPlaces() {
    String text = "Años: µA «Ω» ﬁn";
    assertThat(HelpPage.plain(text)).hasSameSizeAs(text).startsWith("anos");
  }

  @Test
  void aVersionIsShownOnlyWhereThereIsOne() {
    Wording words = Wording.of(Locale.ENGLISH, UnitSystem.METRIC);
    assertThat(ENGLISH.page("about").text()).contains("Halfwave:");
    assertThat(HelpPages.of(words, "1.2").page("about").text()).contains("Halfwave 1.2:");
  }

  @Test
  void whatLooksLikeHtmlIsText() {
    String html = HelpMarkup.html("# a < b & c\n\n**x** <b>y</b>\n- one\n- two\n  more\n\nend");
    assertThat(html.replace("\n", ""))
        .contains("<h1>a &lt; b &amp; c</h1>")
        .contains("<p><strong>x</strong> &lt;b&gt;y&lt;/b&gt;</p>")
        .contains("<ul><li>one</li><li>twomore</li></ul><p>end</p>");
  }

  @Test
  void documentsHaveTheirPicturesAndLinksBetweenThem() {
    Pattern source = Pattern.compile("(?:src|href)=\"([^\"#:]+\\.(?:png|md))[\"#]");
    int pictures = 0;
    for (String topic : HelpTopics.DOCUMENTS) {
      var found = source.matcher(ENGLISH.page(topic).html());
      while (found.find()) {
        if (found.group(1).endsWith(".png")) {
          pictures++;
          assertThat(HelpPages.class.getResource("documents/" + found.group(1)))
              .as("%s: %s", topic, found.group(1))
              .isNotNull();
        }
      }
    }
    assertThat(pictures).isGreaterThan(5);
    assertThat(HelpPages.linked("model.md#3-the-circuit")).contains("model");
    assertThat(HelpPages.linked("../README.md")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void boldIsClosed(HelpPages pages) {
    Pattern mark = Pattern.compile("\\*\\*");
    for (HelpPage page : pages.all()) {
      for (String block : HelpMarkup.blocks(page.markup())) {
        assertThat(mark.matcher(block).results().count() % 2).as(block).isZero();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "drawing,0,drawing",
    "meter.number,0,meter",
    "charts,2,voltage-ladder",
    "tabs,5,lesson",
    "map.canvas,0,position-map",
    "nothing.known,0,''"
  })
  void whatHasTheKeyboardHasAPage(String name, int tab, String topic) {
    assertThat(HelpTopics.of(name, tab)).isEqualTo(topic);
    assertThat(topics(ENGLISH.all()).contains(topic)).isEqualTo(!topic.isEmpty());
  }
}
