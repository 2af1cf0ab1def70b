package halfwave.validation;

import java.util.Locale;

/** Where a number comes from; the labels of {@code docs/model.md}. */
public enum Label {
  /** Read in the source named. */
  SEEN,
  /** Computed: another program, a table of computed flames, a closed form. */
  CALC,
  /** Textbook knowledge, not looked up again. */
  MEMORY,
  /** Common in the trade or a plain assumption; there is no source. */
  PRACTICE;

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
