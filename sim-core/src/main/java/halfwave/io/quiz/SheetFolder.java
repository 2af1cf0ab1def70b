package halfwave.io.quiz;

import halfwave.io.BadInputException;
import halfwave.io.OwnFile;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Quiz;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Answer sheets that were handed in.
 *
 * @param sheets those that can be read, one of each learner, in the order of their files
 * @param refused why others cannot
 */
public record SheetFolder(List<AnswerSheet> sheets, List<BadInputException> refused) {

  /** Takes copies. */
  public SheetFolder {
    sheets = List.copyOf(sheets);
    refused = List.copyOf(refused);
  }

  /**
   * Reads files, and the files of folders; what cannot be read is told and left out.
   *
   * @param places files and folders
   * @param quiz the quiz they answer
   */
  public static SheetFolder read(List<Path> places, Quiz quiz) {
    Map<String, Path> learners = new LinkedHashMap<>();
    List<AnswerSheet> sheets = new ArrayList<>();
    List<BadInputException> refused = new ArrayList<>();
    for (Path file : files(places, refused)) {
      try {
        AnswerSheet sheet = SheetFile.read(file, quiz);
        Path other = learners.putIfAbsent(sheet.learner(), file);
        if (other == null) {
          sheets.add(sheet);
        } else {
          refused.add(
              BadInputException.ofField(
                  file.toString(),
                  "learner",
                  Argument.text(sheet.learner()),
                  Message.of(MessageKey.ALLOWED_ONE_SHEET, Argument.text(other.toString()))));
        }
      } catch (BadInputException e) {
        refused.add(e);
      }
    }
    return new SheetFolder(sheets, refused);
  }

  private static List<Path> files(List<Path> places, List<BadInputException> refused) {
    List<Path> files = new ArrayList<>();
    for (Path place : places) {
      if (!Files.isDirectory(place)) {
        files.add(place);
        continue;
      }
      try (Stream<Path> inside = Files.list(place)) {
        inside.filter(OwnFile::named).sorted().forEach(files::add);
      } catch (IOException e) {
        refused.add(
            BadInputException.ofFile(
                place.toString(), Message.of(MessageKey.ALLOWED_READABLE_FILE)));
      }
    }
    return files;
  }
}
