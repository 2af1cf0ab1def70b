package halfwave.io.quiz;

import halfwave.board.Ignition;
import halfwave.diagnosis.Check;
import halfwave.fault.FaultGroup;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.io.bench.ChangeWords;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Move;
import halfwave.quiz.Temptation;
import halfwave.work.Repair;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A move in words: {@code check NAME}, {@code repair NAME}, {@code power on|off}, {@code gas
 * on|off}, {@code signal on|off}, {@code tempted NAME}, {@code suspects GROUP,GROUP} ({@code
 * suspects nothing}), {@code hint 1}, {@code note TEXT}.
 */
public final class MoveWords {

  private static final String NOTHING = "nothing";
  private static final List<String> SWITCH = List.of("on", "off");

  private MoveWords() {}

  /** The move in words. */
  public static String text(Move move) {
    if (move instanceof Move.Checked checked) {
      return "check " + checked.check().id();
    } else if (move instanceof Move.Repaired repaired) {
      return "repair " + repaired.repair().id();
    } else if (move instanceof Move.Power power) {
      return "power " + onOff(power.on());
    } else if (move instanceof Move.Gas gas) {
      return "gas " + onOff(gas.on());
    } else if (move instanceof Move.Signal signal) {
      return "signal " + onOff(signal.on());
    } else if (move instanceof Move.Tempted tempted) {
      return "tempted " + tempted.temptation().id();
    } else if (move instanceof Move.Suspects suspects) {
      String groups =
          suspects.groups().stream().map(JsonValue::spelling).collect(Collectors.joining(","));
      return "suspects " + (groups.isEmpty() ? NOTHING : groups);
    } else if (move instanceof Move.Hint hint) {
      return "hint " + hint.grade();
    } else if (move instanceof Move.Note note) {
      return "note " + note.text();
    }
    throw new IllegalStateException("no words for " + move);
  }

  private static String onOff(boolean on) {
    return on ? "on" : "off";
  }

  /**
   * Reads a move.
   *
   * @param where where it was typed
   * @param text the words
   * @param ignition of the appliance
   * @throws BadInputException if it is none
   */
  public static Move move(Typed where, String text, Ignition ignition) {
    int space = text.indexOf(' ');
    String word = space < 0 ? text : text.substring(0, space);
    String rest = space < 0 ? "" : text.substring(space + 1).strip();
    Typed further = where.then(word);
    return switch (word) {
      case "check" ->
          new Move.Checked(
              Check.named(rest, ignition)
                  .orElseThrow(() -> further.refused(rest, checks(ignition))));
      case "repair" -> new Move.Repaired(ChangeWords.oneOf(further, Repair.class, rest));
      case "power" -> new Move.Power(on(further, rest));
      case "gas" -> new Move.Gas(on(further, rest));
      case "signal" -> new Move.Signal(on(further, rest));
      case "tempted" -> new Move.Tempted(ChangeWords.oneOf(further, Temptation.class, rest));
      case "suspects" -> new Move.Suspects(groups(further, rest));
      case "hint" -> new Move.Hint(grade(further, rest));
      case "note" -> new Move.Note(rest);
      default -> throw where.refused(text, Message.of(MessageKey.ALLOWED_MOVE));
    };
  }

  private static Message checks(Ignition ignition) {
    return oneOf(Check.all(ignition).stream().map(Check::id));
  }

  private static Message oneOf(Stream<String> words) {
    return Message.of(
        MessageKey.ALLOWED_ONE_OF, Argument.text(words.collect(Collectors.joining(", "))));
  }

  private static boolean on(Typed where, String text) {
    if (!SWITCH.contains(text)) {
      throw where.refused(text, oneOf(SWITCH.stream()));
    }
    return text.equals("on");
  }

  private static Set<FaultGroup> groups(Typed where, String text) {
    Set<FaultGroup> groups = new LinkedHashSet<>();
    if (!text.equals(NOTHING)) {
      for (String word : text.split(",", -1)) {
        groups.add(ChangeWords.oneOf(where, FaultGroup.class, word.strip()));
      }
    }
    return groups;
  }

  private static int grade(Typed where, String text) {
    List<String> grades =
        Stream.iterate(1, g -> g + 1).limit(Move.Hint.GRADES).map(String::valueOf).toList();
    if (!grades.contains(text)) {
      throw where.refused(text, oneOf(grades.stream()));
    }
    return grades.indexOf(text) + 1;
  }
}
