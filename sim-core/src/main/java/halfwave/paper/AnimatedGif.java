package halfwave.paper;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Writes an animated GIF file, picture by picture. */
final class AnimatedGif implements AutoCloseable {

  private static final String FORMAT = "javax_imageio_gif_image_1.0";

  private final ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
  private final ImageOutputStream stream;
  private boolean begun;

  AnimatedGif(OutputStream out) throws IOException {
    stream = ImageIO.createImageOutputStream(out);
    writer.setOutput(stream);
    writer.prepareWriteSequence(null);
  }

  /** The next picture, and for how long it is shown (s). */
  void add(BufferedImage image, double shownSeconds) throws IOException {
    IIOMetadata data =
        writer.getDefaultImageMetadata(
            ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
    IIOMetadataNode root = (IIOMetadataNode) data.getAsTree(FORMAT);
    IIOMetadataNode control = child(root, "GraphicControlExtension");
    control.setAttribute("disposalMethod", "none");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "FALSE");
    control.setAttribute("transparentColorIndex", "0");
    control.setAttribute("delayTime", Long.toString(Math.round(100 * shownSeconds)));
    if (!begun) {
      begun = true;
      child(root, "ApplicationExtensions").appendChild(forEver());
    }
    data.setFromTree(FORMAT, root);
    writer.writeToSequence(new IIOImage(image, null, data), null);
  }

  /**
   * By the block that all viewers look for, which has the name of the program that first had it.
   */
  private static IIOMetadataNode forEver() {
    IIOMetadataNode node = new IIOMetadataNode("ApplicationExtension");
    node.setAttribute("applicationID", "NETSCAPE");
    node.setAttribute("authenticationCode", "2.0");
    node.setUserObject(new byte[] {1, 0, 0});
    return node;
  }

  private static IIOMetadataNode child(IIOMetadataNode root, String name) {
    for (int k = 0; k < root.getLength(); k++) {
      if (root.item(k).getNodeName().equals(name)) {
        return (IIOMetadataNode) root.item(k);
      }
    }
    IIOMetadataNode made = new IIOMetadataNode(name);
    root.appendChild(made);
    return made;
  }

  void end() throws IOException {
    writer.endWriteSequence();
    stream.flush();
  }

  @Override
  public void close() throws IOException {
    writer.dispose();
    stream.close();
  }
}
