package halfwave.notebook.kernel;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Sentences of the kernel, in the language of the machine. */
final class Words {

  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle(
          "halfwave.notebook.kernel.kernel",
          Locale.getDefault(),
          ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));

  private Words() {}

  static String of(String key, Object... arguments) {
    return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(arguments);
  }
}
