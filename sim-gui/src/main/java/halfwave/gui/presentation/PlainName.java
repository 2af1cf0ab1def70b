package halfwave.gui.presentation;

import java.util.Locale;

/** A name for a call or a file from a title: no sign of it troubles any file system. */
public final class PlainName {

  private PlainName() {}

  /** The name. */
  public static String of(String title) {
    return of(title, "call");
  }

  /** The same, with another name for a title without a plain letter. */
  public static String of(String title, String otherwise) {
    String plain =
        HelpPage.plain(title)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return plain.isEmpty() ? otherwise : plain;
  }
}
