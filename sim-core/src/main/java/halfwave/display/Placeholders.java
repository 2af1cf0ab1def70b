package halfwave.display;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts arguments in a text of a bundle. A placeholder is a number in braces, nothing else is. */
public final class Placeholders {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d)}");

  private Placeholders() {}

  /**
   * The text with its arguments. A placeholder for which there is none stays as it is: a slip of
   * whoever translated it must not end the program.
   *
   * @param text with {0}, {1} and so on
   * @param arguments what stands for them
   */
  public static String filled(String text, List<?> arguments) {
    Matcher matcher = PLACEHOLDER.matcher(text);
    return matcher.replaceAll(
        found -> {
          int index = Integer.parseInt(found.group(1));
          return Matcher.quoteReplacement(
              index < arguments.size() ? String.valueOf(arguments.get(index)) : found.group());
        });
  }
}
