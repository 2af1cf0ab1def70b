package halfwave.validation;

import halfwave.paper.PictureFormat;
import halfwave.picture.Picture;
import java.util.List;
import java.util.Locale;

/** Pictures of the report. */
enum Plot {
  TOLERANCES(
      "tolerances.png",
      "Share of the tolerance used, by area",
      "Each dot is a line of the tables below; those that use less than 1 % are only counted. At 100 % a check would just pass. Hollow: the band is the practice of the trade."),
  CURRENTS(
      "currents.png",
      "Computed against expected currents",
      "Every current of the tables below that has one expected value, from a tenth of a nanoamp up. Below some nanoamps a dot may leave the diagonal: there the tolerance is 2 nA and more."),
  BANDS(
      "bands.png",
      "Where the model lies in the bands of the trade",
      "From left to right: the band that practice gives. The bar reaches from the smallest to the largest number of the model.");

  private final String file;
  private final String title;
  private final String words;

  Plot(String file, String title, String words) {
    this.file = file;
    this.title = title;
    this.words = words;
  }

  String file() {
    return file;
  }

  String title() {
    return title;
  }

  String words() {
    return words;
  }

  byte[] bytes(List<Row> rows, List<Checked> checks) {
    Picture picture =
        switch (this) {
          case TOLERANCES -> TolerancePlot.picture(rows);
          case CURRENTS -> CurrentPlot.picture(checks);
          case BANDS -> BandPlot.picture(checks);
        };
    return PictureFormat.PNG.bytes(picture, title, Locale.ENGLISH);
  }
}
