package halfwave.paper;

import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Writes slides: as a folder of PNG files, or as one animated GIF file. */
public final class SlideFiles {

  /** Pixels of an animated picture to a pixel of a slide (1): 1280 by 720. */
  private static final double ANIMATED = 2.0 / 3;

  private SlideFiles() {}

  /**
   * One PNG file for each slide.
   *
   * @param folder where; made where it does not exist and its own folder does
   * @param slides what
   * @param watch is told how many are written
   * @return the files, or nothing if it was given up; those that were written by then stay
   * @throws BadInputException where that is no folder to write in
   */
  public static Optional<List<Path>> write(Path folder, List<Slide> slides, Watch watch) {
    prepare(folder);
    List<Path> files = slides.stream().map(s -> folder.resolve(s.name() + ".png")).toList();
    files.forEach(AtomicFile::check);
    for (int k = 0; k < slides.size(); k++) {
      AtomicFile.write(files.get(k), Pixels.png(Pixels.image(slides.get(k).picture(), 1)));
      if (!watch.goOn(k + 1, slides.size())) {
        return Optional.empty();
      }
    }
    return Optional.of(files);
  }

  /**
   * Makes the folder where there is none.
   *
   * @throws BadInputException where that is no folder to write in
   */
  public static void prepare(Path folder) {
    try {
      if (!Files.isDirectory(folder)) {
        Files.createDirectory(folder);
      }
      if (!Files.isWritable(folder)) {
        throw refused(folder);
      }
    } catch (IOException e) {
      throw refused(folder);
    }
  }

  private static BadInputException refused(Path folder) {
    return BadInputException.ofFile(
        folder.toString(), Message.of(MessageKey.ALLOWED_WRITABLE_FOLDER));
  }

  /**
   * All slides in one animated picture, each as long as it takes to read it. It begins anew at its
   * end.
   *
   * @param file where
   * @param slides what; one or more
   * @param watch is told how many are in it
   * @return whether the file is there; if it was given up, nothing is written
   * @throws BadInputException where it cannot be written
   */
  public static boolean animation(Path file, List<Slide> slides, Watch watch) {
    try (AtomicFile target = AtomicFile.open(file);
        OutputStream out = target.stream();
        AnimatedGif gif = new AnimatedGif(out)) {
      for (int k = 0; k < slides.size(); k++) {
        BufferedImage image = Pixels.image(slides.get(k).picture(), ANIMATED);
        gif.add(image, slides.get(k).shownSeconds());
        if (!watch.goOn(k + 1, slides.size())) {
          return false;
        }
      }
      gif.end();
      target.keep();
      return true;
    } catch (IOException e) {
      throw BadInputException.ofFile(file.toString(), Message.of(MessageKey.ALLOWED_WRITABLE_FILE));
    }
  }
}
