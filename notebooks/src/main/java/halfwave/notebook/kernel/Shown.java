package halfwave.notebook.kernel;

import halfwave.notebook.Svg;
import halfwave.notebook.Table;
import halfwave.paper.Pixels;
import halfwave.picture.Picture;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.lang.reflect.Array;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;

/**
 * A result as a page takes it.
 *
 * @param data the result by MIME type; plain text is always among them
 * @param widthPixels width that an image is to have on the page; zero where there is none
 */
record Shown(Map<String, String> data, int widthPixels) {

  static final String PLAIN = "text/plain";
  static final String MARKDOWN = "text/markdown";
  static final String PNG = "image/png";
  static final String SVG = "image/svg+xml";

  /** Widest that a picture is shown: a page of print, or half of a screen (pixels). */
  private static final int PAGE_PIXELS = 720;

  /** Pixels of a picture to one of the page: crisp on fine screens, and still a small file. */
  private static final double FINE = 1.5;

  /** Shades of a colour (of 256) that become one. */
  private static final int SHADES = 4;

  private static final int CHART_WIDTH = 960;
  private static final int CHART_HEIGHT = 600;

  static Shown of(Object result) {
    if (result instanceof Picture picture) {
      double scale = Math.min(1, PAGE_PIXELS / picture.width());
      BufferedImage image = Pixels.image(picture, FINE * scale);
      coarsen(image);
      return image(image, (int) Math.round(scale * picture.width()));
    }
    if (result instanceof RenderedImage image) {
      return image(image, Math.min(PAGE_PIXELS, image.getWidth()));
    }
    if (result instanceof JFreeChart chart) {
      Rectangle2D area = new Rectangle2D.Double(0, 0, CHART_WIDTH, CHART_HEIGHT);
      return of(Picture.of(CHART_WIDTH, CHART_HEIGHT, g -> chart.draw(g, area)));
    }
    if (result instanceof Svg drawing) {
      return new Shown(ordered(SVG, drawing.markup(), "SVG"), 0);
    }
    if (result instanceof Table table) {
      return new Shown(ordered(MARKDOWN, table.markdown(), table.toString()), 0);
    }
    return new Shown(Map.of(PLAIN, plain(result)), 0);
  }

  /** Shades that no eye tells apart are made one: a flame's gradient halves its size by that. */
  private static void coarsen(BufferedImage image) {
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int rgb = image.getRGB(x, y);
        image.setRGB(x, y, coarse(rgb >> 16) << 16 | coarse(rgb >> 8) << 8 | coarse(rgb));
      }
    }
  }

  private static int coarse(int shade) {
    return Math.min(255, ((shade & 255) + SHADES / 2) / SHADES * SHADES);
  }

  private static Shown image(RenderedImage image, int width) {
    String bytes = Base64.getEncoder().encodeToString(Pixels.png(image));
    String plain = "PNG " + image.getWidth() + " × " + image.getHeight();
    return new Shown(ordered(PNG, bytes, plain), width);
  }

  private static Map<String, String> ordered(String type, String content, String plain) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put(type, content);
    data.put(PLAIN, plain);
    return data;
  }

  private static String plain(Object result) {
    return result.getClass().isArray()
        ? IntStream.range(0, Array.getLength(result))
            .mapToObj(k -> String.valueOf(Array.get(result, k)))
            .collect(Collectors.joining(", ", "[", "]"))
        : String.valueOf(result);
  }
}
