package halfwave.gui.presentation;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.circuit.Point;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.PartCard;
import halfwave.gui.presentation.bench.Spot;
import halfwave.gui.presentation.bench.WorkCard;
import halfwave.instrument.MeterFunction;
import halfwave.picture.scene.DrawnPart;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The window's words are there in both languages, and no more and no fewer than are used. */
class WindowWordsTest {

  private static final Path SOURCES = Path.of("src", "main", "java", "halfwave", "gui");
  private static final Map<String, String> ENGLISH = bundle("window.properties");
  private static final Map<String, String> SPANISH = bundle("window_es.properties");

  /** A literal that looks like a key. Names of components look the same and are cut out before. */
  private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:\\.[a-z0-9-]*[a-z0-9])+)\"");

  private static final Pattern NAME_OF_COMPONENT = Pattern.compile("setName\\([^)]*\\)");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d}");

  private static Map<String, String> bundle(String file) {
    Properties read = new Properties();
    try (var in =
        new InputStreamReader(
            Objects.requireNonNull(Wording.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      read.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> sorted = new TreeMap<>();
    read.forEach((k, v) -> sorted.put((String) k, (String) v));
    return sorted;
  }

  private static List<String> sources() {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<String> texts = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        texts.add(NAME_OF_COMPONENT.matcher(Files.readString(file)).replaceAll(""));
      }
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> literals() {
    Set<String> areas = ENGLISH.keySet().stream().map(WindowWordsTest::area).collect(toSet());
    return sources().stream()
        .flatMap(text -> LITERAL.matcher(text).results())
        .map(found -> found.group(1))
        .filter(key -> areas.contains(area(key)) && !key.endsWith(".json"))
        .collect(toSet());
  }

  private static java.util.stream.Collector<String, ?, Set<String>> toSet() {
    return Collectors.toCollection(TreeSet::new);
  }

  private static String area(String key) {
    return key.substring(0, key.indexOf('.'));
  }

  private static Set<String> derived() {
    return Stream.of(
            Stream.of(MeterFunction.values()).map(f -> "function." + plain(f)),
            Stream.of(Point.values()).map(p -> "point." + plain(p)),
            Stream.of(Spot.values()).map(Spot::key),
            Stream.of(DrawnPart.values()).map(PartCard::key),
            Stream.of(WorkCard.Sort.values()).map(s -> "work." + plain(s)),
            ShippedBenches.all().stream().map(b -> "bench." + b.name()))
        .flatMap(s -> s)
        .collect(toSet());
  }

  private static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    assertThat(SPANISH.keySet()).isEqualTo(ENGLISH.keySet());
    assertThat(ENGLISH).hasSizeGreaterThan(300);
  }

  @Test
  void bothLanguagesLeaveRoomForTheSameThings() {
    ENGLISH.forEach(
        (key, english) ->
            assertThat(holes(SPANISH.getOrDefault(key, ""))).as(key).isEqualTo(holes(english)));
  }

  private static Set<String> holes(String text) {
    return PLACEHOLDER.matcher(text).results().map(r -> r.group()).collect(toSet());
  }

  @Test
  void everyKeyOfTheSourcesIsThere() {
    Set<String> literals = literals();
    assertThat(literals).as("the scan finds what is known to be used").contains("meter.title");
    assertThat(literals).hasSizeGreaterThan(150);
    assertThat(ENGLISH.keySet()).containsAll(literals);
  }

  @Test
  void everyKeyThatStandsForAThingIsThere() {
    assertThat(ENGLISH.keySet()).containsAll(derived());
  }

  @Test
  void noWordIsEmptyOrLeftUntranslated() {
    Set<String> same = new TreeSet<>();
    ENGLISH.forEach(
        (key, english) -> {
          assertThat(english.strip()).as(key).isNotEmpty();
          String spanish = SPANISH.getOrDefault(key, "");
          assertThat(spanish.strip()).as(key).isNotEmpty();
          if (english.length() > 25 && english.equals(spanish)) {
            same.add(key);
          }
        });
    assertThat(same).as("longer than 25 signs and the same in both languages").isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bar.undo-act", "strip.spoken", "knob.tip"})
  void whatStandsInABraceOrADollarIsTakenAsItIs(String key) {
    String text = DirectBench.ENGLISH.text(key, "{0}$1\\", "b", "c", "d");
    assertThat(text).contains("{0}$1\\");
  }
}
