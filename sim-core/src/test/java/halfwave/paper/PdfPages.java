package halfwave.paper;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A PDF file as a reader of it sees it: pages, words and where they stand. */
final class PdfPages {

  /** A letter with its place, from the upper left corner of its page (points). */
  record Letter(String letter, int page, double xRatio, double yRatio, double sizeRatio) {}

  private final byte[] file;

  PdfPages(byte[] file) {
    this.file = file;
  }

  private interface Look<T> {
    T at(PDDocument document) throws IOException;
  }

  private <T> T look(Look<T> look) {
    try (PDDocument document = Loader.loadPDF(file)) {
      return look.at(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  int count() {
    return look(PDDocument::getNumberOfPages);
  }

  String title() {
    return look(d -> d.getDocumentInformation().getTitle());
  }

  String language() {
    return look(d -> d.getDocumentCatalog().getLanguage());
  }

  double widthPoints() {
    return look(d -> (double) d.getPage(0).getMediaBox().getWidth());
  }

  double heightPoints() {
    return look(d -> (double) d.getPage(0).getMediaBox().getHeight());
  }

  /** All words, with single spaces between. */
  String text() {
    return look(d -> new PDFTextStripper().getText(d)).replaceAll("\\s+", " ");
  }

  /** The words of a page, from zero. */
  String text(int page) {
    return look(d -> {
          PDFTextStripper stripper = new PDFTextStripper();
          stripper.setStartPage(page + 1);
          stripper.setEndPage(page + 1);
          return stripper.getText(d);
        })
        .replaceAll("\\s+", " ");
  }

  BufferedImage image(int page) {
    return look(d -> new PDFRenderer(d).renderImageWithDPI(page, 72));
  }

  /** Every letter, as shares of width and height of its page. */
  List<Letter> letters() {
    List<Letter> all = new ArrayList<>();
    look(
        d ->
            new PDFTextStripper() {
              @Override
              protected void writeString(String text, List<TextPosition> positions) {
                for (TextPosition p : positions) {
                  double width = p.getPageWidth();
                  double height = p.getPageHeight();
                  add(p, p.getXDirAdj(), width, height);
                  add(p, p.getXDirAdj() + p.getWidthDirAdj(), width, height);
                }
              }

              private void add(TextPosition p, double x, double width, double height) {
                all.add(
                    new Letter(
                        p.getUnicode(),
                        getCurrentPageNo() - 1,
                        x / width,
                        p.getYDirAdj() / height,
                        p.getYScale() / height));
              }
            }.getText(d));
    return all;
  }

  /** The width of each line that is drawn, as a share of the height of its page. */
  List<Double> lines() {
    List<Double> widths = new ArrayList<>();
    look(
        d -> {
          for (PDPage page : d.getPages()) {
            new Strokes(page, widths).processPage(page);
          }
          return widths;
        });
    return widths;
  }

  /** Watches lines being drawn. */
  private static final class Strokes extends PDFGraphicsStreamEngine {

    private final List<Double> widths;
    private final double height;
    private Point2D at = new Point2D.Double();

    Strokes(PDPage page, List<Double> widths) {
      super(page);
      this.widths = widths;
      height = page.getMediaBox().getHeight();
    }

    private void stroke() {
      AffineTransform t =
          getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
      double scale = Math.sqrt(Math.abs(t.getDeterminant()));
      widths.add(getGraphicsState().getLineWidth() * scale / height);
    }

    @Override
    public void strokePath() {
      stroke();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
      stroke();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void moveTo(float x, float y) {
      at = new Point2D.Double(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      at = new Point2D.Double(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      at = new Point2D.Double(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
      return at;
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {}

    @Override
    public void fillPath(int windingRule) {}

    @Override
    public void shadingFill(COSName shadingName) {}
  }
}
