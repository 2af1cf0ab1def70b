package halfwave.cli;

import halfwave.board.Ignition;
import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.sequence.Changes;
import halfwave.work.Access;
import halfwave.work.Handling;
import halfwave.work.Look;
import halfwave.work.Repair;
import halfwave.work.Tool;
import halfwave.work.Work;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One thing to do, in text. */
final class WorkPage {

  private final Sentences sentences;
  private final Ignition ignition;
  private final StringBuilder text = new StringBuilder();

  WorkPage(Sentences sentences, Ignition ignition) {
    this.sentences = sentences;
    this.ignition = ignition;
  }

  /** What has to be off. */
  static Message off(Work work) {
    if (work.needsFlame()) {
      return Message.of(MessageKey.WORK_BURNING);
    }
    if (work.powerOff()) {
      return Message.of(work.gasOff() ? MessageKey.WORK_OFF_BOTH : MessageKey.WORK_OFF_POWER);
    }
    return Message.of(work.gasOff() ? MessageKey.WORK_OFF_GAS : MessageKey.WORK_OFF_NONE);
  }

  String text(Work work) {
    text.setLength(0);
    Access access = work.part().access();
    String name = sentences.name(work, ignition);
    say(MessageKey.FAULT_TITLE, Argument.text(work.id()), Argument.text(name));
    if (!work.possibleAt(ignition)) {
      say(MessageKey.WORK_IMPOSSIBLE, Argument.name(ignition));
    }
    text.append('\n');
    say(MessageKey.WORK_MINUTES, Argument.count(work.minutes()), Argument.count(access.minutes()));
    say(MessageKey.WORK_PART, Argument.name(work.part()));
    list(MessageKey.WORK_COVERS, access.covers());
    say(MessageKey.WORK_FASTENERS, Argument.count(access.fasteners()));
    if (!work.tools().equals(Set.of(Tool.HANDS))) {
      list(MessageKey.WORK_TOOLS, work.tools());
    }
    text.append(sentences.text(off(work))).append('\n');
    if (!(work instanceof Handling)) {
      say(MessageKey.WORK_PREPARATION, Argument.name(work.preparation()));
    }
    list(MessageKey.WORK_HAZARDS, work.hazards(ignition));
    if (work instanceof Look look) {
      list(MessageKey.WORK_OUTCOMES, look.outcomes());
    } else if (work instanceof Repair repair) {
      repair(repair);
    } else if (work instanceof Handling handling) {
      handling(handling);
    }
    if (!work.cautions(ignition).isEmpty()) {
      text.append('\n');
      say(MessageKey.WORK_CAUTIONS);
      work.cautions(ignition)
          .forEach(caution -> text.append("  ").append(sentences.name(caution)).append('\n'));
    }
    return text.toString();
  }

  private void repair(Repair repair) {
    list(MessageKey.WORK_RIGHTS, repair.aspects());
    if (repair.costUnits() == 0) {
      say(MessageKey.WORK_NO_COST);
    } else {
      say(MessageKey.WORK_COST, Argument.count(repair.costUnits()));
    }
    list(
        MessageKey.WORK_SPOILS,
        Stream.<Work>concat(repair.spoiltLooks().stream(), repair.spoiltReadings().stream())
            .map(work -> sentences.name(work, ignition)));
    if (repair.residueMeters() > 0) {
      say(MessageKey.WORK_RESIDUE, Argument.quantity(repair.residueMeters(), Dimension.LENGTH));
    }
    repair.mishap().ifPresent(m -> say(MessageKey.WORK_MISHAP, Argument.name(m), chance(m)));
  }

  private void handling(Handling handling) {
    say(MessageKey.WORK_CHANCE, chance(handling));
    say(MessageKey.WORK_DOES, Argument.nested(Changes.said(handling.change())));
    handling.trigger().ifPresent(t -> say(MessageKey.FAULT_SHOWS_WITH, Argument.name(t)));
    say(
        MessageKey.WORK_RIGHT_WAY,
        Argument.count(handling.rightMinutes()),
        Argument.text(sentences.rightWay(handling)));
  }

  private Argument chance(Handling handling) {
    return Argument.quantity(handling.probabilityRatio(ignition), Dimension.RATIO);
  }

  private void list(MessageKey key, Collection<? extends Enum<?>> constants) {
    if (!constants.isEmpty()) {
      list(key, constants.stream().map(sentences::name));
    }
  }

  /** Some of the names have commas of their own. */
  private void list(MessageKey key, Stream<String> names) {
    say(key, Argument.text(names.collect(Collectors.joining("; "))));
  }

  private void say(MessageKey key, Argument... arguments) {
    text.append(sentences.text(Message.of(key, arguments))).append('\n');
  }
}
