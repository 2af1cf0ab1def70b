package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.board.StatusCode;
import halfwave.display.BoardNumber;
import halfwave.display.Sentences;
import halfwave.io.AtomicFile;
import halfwave.io.JsonValue;
import halfwave.io.bench.BoardText;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the shipped boards, shows one, or writes one as a file to edit. */
@Command(name = "boards")
final class BoardsCommand implements Callable<Integer> {

  private static final String REPLACE = "--replace";

  private static final int NAME_WIDTH = 24;
  private static final int FIELD_WIDTH = 35;
  private static final int VALUE_WIDTH = 11;
  private static final int LIGHT_WIDTH = 9;

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "BOARD", arity = "0..1", descriptionKey = "one-board")
  private @Nullable String board;

  @Option(names = "--write", paramLabel = "FILE", descriptionKey = "write-board")
  private @Nullable Path write;

  @Option(names = REPLACE, descriptionKey = "replace")
  private boolean replace;

  @Override
  public Integer call() {
    if (board == null) {
      if (write != null) {
        throw standard.missing("BOARD");
      }
      standard.out().print(standard.json() ? listJson() : list());
      return 0;
    }
    BoardSettings chosen = BoardArgument.resolve(board);
    if (write != null) {
      AtomicFile.write(write, BoardText.of(chosen), replace, REPLACE);
      if (standard.json()) {
        ObjectNode written = JsonNodeFactory.instance.objectNode().put("file", write.toString());
        standard.out().print(written.toPrettyString() + "\n");
      }
    } else {
      standard.out().print(standard.json() ? BoardText.of(chosen) : page(chosen));
    }
    return 0;
  }

  private String list() {
    StringBuilder text = new StringBuilder();
    for (BoardSettings b : ShippedBoards.all()) {
      text.append(padded(b.name(), NAME_WIDTH)).append(about(b)).append('\n');
    }
    light(text.append('\n'));
    return text.toString();
  }

  private String listJson() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode boards = root.putArray("boards");
    for (BoardSettings b : ShippedBoards.all()) {
      boards
          .addObject()
          .put("name", b.name())
          .put("description", about(b))
          .put("ignition", JsonValue.spelling(b.ignition()));
    }
    ArrayNode codes = root.putArray("statusCodes");
    for (StatusCode code : StatusCode.values()) {
      codes
          .addObject()
          .put("code", JsonValue.spelling(code))
          .put("longFlashes", code.longFlashes())
          .put("shortFlashes", code.shortFlashes())
          .put("meaning", standard.sentences().name(code));
    }
    return root.toPrettyString() + "\n";
  }

  /** What the board is, every number of it, and what its light says. */
  private String page(BoardSettings b) {
    Sentences sentences = standard.sentences();
    StringBuilder text = new StringBuilder();
    Message line =
        Message.of(MessageKey.BOARD_LINE, Argument.text(b.name()), Argument.text(about(b)));
    text.append(sentences.text(line)).append("\n\n");
    for (BoardNumber number : BoardNumber.values()) {
      if (b.learning() == null && number.field().startsWith("learning.")) {
        continue;
      }
      text.append(padded(number.field(), FIELD_WIDTH))
          .append(padded(number.text(b, sentences), VALUE_WIDTH))
          .append(sentences.name(number))
          .append('\n');
    }
    light(text.append('\n'));
    return text.toString();
  }

  private void light(StringBuilder text) {
    Sentences sentences = standard.sentences();
    text.append(sentences.text(Message.of(MessageKey.BOARD_LIGHT))).append('\n');
    for (StatusCode code : StatusCode.values()) {
      text.append("  ")
          .append(padded(Flashes.of(code), LIGHT_WIDTH))
          .append(sentences.name(code))
          .append('\n');
    }
  }

  private String about(BoardSettings b) {
    Sentences sentences = standard.sentences();
    // a board that was edited may still carry the name of the shipped one
    return ShippedBoards.all().contains(b)
        ? sentences.board(b.name()).orElseThrow()
        : sentences.name(b.ignition());
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(2, width - text.length()));
  }
}
