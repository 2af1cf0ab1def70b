package halfwave.notebook.kernel;

import java.util.List;
import java.util.stream.Stream;

/** What is imported before the first cell. */
final class Preamble {

  /** The README of the notebooks lists them too. */
  static final List<String> PACKAGES =
      List.of(
          "java.util",
          "java.util.stream",
          "halfwave.circuit",
          "halfwave.flame",
          "halfwave.surface",
          "halfwave.board",
          "halfwave.instrument",
          "halfwave.bench",
          "halfwave.fault",
          "halfwave.work",
          "halfwave.sequence",
          "halfwave.explain",
          "halfwave.evidence",
          "halfwave.diagnosis",
          "halfwave.quiz",
          "halfwave.grading",
          "halfwave.matching",
          "halfwave.forecast",
          "halfwave.display",
          "halfwave.io",
          "halfwave.io.bench",
          "halfwave.io.sequence",
          "halfwave.io.evidence",
          "halfwave.io.lesson",
          "halfwave.io.quiz",
          "halfwave.picture",
          "halfwave.picture.chart",
          "halfwave.picture.scene",
          "halfwave.picture.flame",
          "halfwave.picture.bench",
          "halfwave.notebook");

  private Preamble() {}

  /** The imports, a statement each. */
  static List<String> statements() {
    return Stream.concat(
            PACKAGES.stream().map(name -> "import " + name + ".*;"),
            Stream.of(
                "import static halfwave.notebook.Lab.*;",
                "import static halfwave.notebook.Casework.*;"))
        .toList();
  }
}
