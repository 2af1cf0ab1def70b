package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import halfwave.io.AtomicFile;
import halfwave.lesson.Demonstration;
import halfwave.paper.HandoutPages;
import halfwave.paper.LessonSlides;
import halfwave.paper.PaperSize;
import halfwave.paper.Slide;
import halfwave.paper.SlideFiles;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A demonstration on paper and as pictures. A mixin. */
final class LessonExports {

  private static final String HANDOUT = "--handout";
  private static final String ANIMATION = "--animation";

  @Mixin private PaperOption paper = new PaperOption();

  @Option(names = HANDOUT, paramLabel = "FILE", descriptionKey = "handout")
  private @Nullable Path handout;

  @Option(names = "--key", descriptionKey = "handout-key")
  private boolean key;

  @Option(names = "--pictures", paramLabel = "FOLDER", descriptionKey = "lesson-pictures")
  private @Nullable Path pictures;

  @Option(names = ANIMATION, paramLabel = "FILE", descriptionKey = "animation")
  private @Nullable Path animation;

  /** Whether anything is to be written. */
  boolean wanted() {
    return handout != null || pictures != null || animation != null;
  }

  /** Refuses what cannot be written, before any work is done. */
  void check(String command) {
    paper.size(command);
    if (handout != null) {
      Ending.check(command, HANDOUT, handout, ".pdf");
    }
    if (animation != null) {
      Ending.check(command, ANIMATION, animation, ".gif");
    }
    if (pictures != null) {
      SlideFiles.prepare(pictures);
    }
  }

  /** Writes it. */
  void write(Demonstration demonstration, Standard standard) {
    String command = standard.spec().qualifiedName();
    PaperSize size = paper.size(command);
    ArrayNode files = JsonNodeFactory.instance.arrayNode();
    if (handout != null) {
      byte[] pdf =
          HandoutPages.of(
                  demonstration, size, standard.sentences(), standard.language().locale(), key)
              .pdf();
      AtomicFile.write(handout, pdf);
      files.add(handout.toString());
    }
    if (pictures != null || animation != null) {
      slides(demonstration, standard, files);
    }
    if (standard.json()) {
      standard
          .out()
          .print(JsonNodeFactory.instance.objectNode().set("files", files).toPrettyString() + "\n");
    }
  }

  private void slides(Demonstration demonstration, Standard standard, ArrayNode files) {
    List<Slide> slides =
        LessonSlides.of(demonstration, standard.sentences(), standard.language().locale());
    Progress progress = new Progress(standard);
    try {
      if (pictures != null) {
        SlideFiles.write(pictures, slides, progress::painted)
            .orElseThrow()
            .forEach(f -> files.add(f.toString()));
      }
      if (animation != null) {
        SlideFiles.animation(animation, slides, progress::painted);
        files.add(animation.toString());
      }
    } finally {
      progress.end();
    }
  }
}
