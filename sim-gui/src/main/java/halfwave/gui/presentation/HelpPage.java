package halfwave.gui.presentation;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A page of help.
 *
 * @param topic by which it is asked for
 * @param group what the list of pages puts it under
 * @param title its heading
 * @param markup all of it, in the form that {@link HelpMarkup} reads
 * @param text what a reader reads, without signs of form
 */
public record HelpPage(String topic, String group, String title, String markup, String text) {

  static HelpPage of(String topic, String group, String markup) {
    String first = markup.lines().findFirst().orElse("");
    String title = first.replaceFirst("^# *", "");
    return new HelpPage(topic, group, title, markup, HelpMarkup.text(markup));
  }

  /** The page for a viewer of HTML, without styles. */
  public String html() {
    return HelpMarkup.html(markup);
  }

  /** Whether all words that were typed stand in it, whatever their accents and capitals. */
  boolean holds(String typed) {
    String all = plain(text());
    return Arrays.stream(words(typed)).allMatch(all::contains);
  }

  /** Whether something was typed and all of it stands in the title. */
  boolean titled(String typed) {
    String heading = plain(title);
    return !typed.isBlank() && Arrays.stream(words(typed)).allMatch(heading::contains);
  }

  /** The words that were typed, plain. */
  public static String[] words(String typed) {
    String sought = plain(typed.strip());
    return sought.isEmpty() ? new String[0] : sought.split("\\s+");
  }

  /** Whether a text has all the words that were typed; of no words it has all. */
  public static boolean holds(String text, String typed) {
    String all = plain(text);
    return Stream.of(words(typed)).allMatch(all::contains);
  }

  /** Without accents and capitals, sign for sign: a place in it is the place in the text. */
  public static String plain(String text) {
    StringBuilder made = new StringBuilder(text.length());
    for (int k = 0; k < text.length(); k++) {
      String sign = Normalizer.normalize(text.substring(k, k + 1), Normalizer.Form.NFD);
      made.append(sign.substring(0, 1).toLowerCase(Locale.ROOT).charAt(0));
    }
    return made.toString();
  }
}
