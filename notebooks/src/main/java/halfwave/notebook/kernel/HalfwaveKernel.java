package halfwave.notebook.kernel;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.dflib.jjava.jupyter.kernel.BaseKernel;
import org.dflib.jjava.jupyter.kernel.HelpLink;
import org.dflib.jjava.jupyter.kernel.JupyterIO;
import org.dflib.jjava.jupyter.kernel.LanguageInfo;
import org.dflib.jjava.jupyter.kernel.ReplacementOptions;
import org.dflib.jjava.jupyter.kernel.comm.CommManager;
import org.dflib.jjava.jupyter.kernel.display.DisplayData;
import org.dflib.jjava.jupyter.kernel.display.Renderer;
import org.dflib.jjava.jupyter.kernel.magic.MagicsRegistry;
import org.dflib.jjava.jupyter.kernel.util.StringStyler;
import org.jspecify.annotations.Nullable;

/** The cells behind the protocol of notebooks. */
final class HalfwaveKernel extends BaseKernel {

  private static final LanguageInfo JAVA =
      new LanguageInfo(
          "java",
          Integer.toString(Runtime.version().feature()),
          "text/x-java",
          ".java",
          "java",
          "text/x-java",
          "script");

  private final Cells cells = new Cells();

  HalfwaveKernel() {
    super(
        "halfwave",
        "1",
        JAVA,
        List.<HelpLink>of(),
        null,
        new JupyterIO(StandardCharsets.UTF_8),
        new CommManager(),
        new Renderer(),
        null,
        new MagicsRegistry(),
        false,
        new StringStyler.Builder().build());
  }

  @Override
  public @Nullable Object evalRaw(String source) {
    return cells.evaluate(source);
  }

  @Override
  public @Nullable DisplayData eval(String source) {
    Object result = evalRaw(source);
    if (result == null) {
      return null;
    }
    Shown shown = Shown.of(result);
    DisplayData display = new DisplayData();
    shown.data().forEach(display::putData);
    if (shown.widthPixels() > 0) {
      display.putMetaData(Shown.PNG, Map.of("width", shown.widthPixels()));
    }
    return display;
  }

  @Override
  public @Nullable DisplayData inspect(String source, int cursor, boolean more) {
    String signature = cells.signature(source, cursor);
    return signature.isEmpty() ? null : new DisplayData(signature);
  }

  @Override
  public ReplacementOptions complete(String source, int cursor) {
    int[] anchor = {cursor};
    List<String> found = cells.completions(source, cursor, anchor);
    return new ReplacementOptions(found, anchor[0], cursor);
  }

  @Override
  public String isComplete(String source) {
    return cells.unfinished(source) ? "  " : IS_COMPLETE_YES;
  }

  @Override
  public void interrupt() {
    cells.stop();
  }

  @Override
  public List<String> formatError(Throwable failure) {
    return List.of(String.valueOf(failure.getMessage()).split("\n", -1));
  }

  @Override
  public void onShutdown(boolean restarting) {
    super.onShutdown(restarting);
    cells.close();
  }
}
