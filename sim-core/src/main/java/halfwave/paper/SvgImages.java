package halfwave.paper;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.util.Base64;
import org.apache.batik.svggen.ImageHandlerBase64Encoder;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.w3c.dom.Element;

/** Puts the pixels of flames and hatchings into an SVG file, by the JDK's own means. */
final class SvgImages extends ImageHandlerBase64Encoder {

  @Override
  public void handleHREF(Image image, Element element, SVGGeneratorContext context) {
    BufferedImage copy =
        new BufferedImage(image.getWidth(null), image.getHeight(null), BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = copy.createGraphics();
    g.drawImage(image, 0, 0, null);
    g.dispose();
    handleHREF((RenderedImage) copy, element, context);
  }

  @Override
  public void handleHREF(RenderedImage image, Element element, SVGGeneratorContext context) {
    element.setAttributeNS(
        "http://www.w3.org/1999/xlink",
        "xlink:href",
        "data:image/png;base64," + Base64.getEncoder().encodeToString(Pixels.png(image)));
  }
}
