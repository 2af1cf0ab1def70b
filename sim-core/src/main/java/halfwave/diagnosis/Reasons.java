package halfwave.diagnosis;

import halfwave.fault.FaultKind;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Why something is believed or advised, in messages. */
public final class Reasons {

  /** A smaller change of a probability is not worth telling (1) [judgement]. */
  private static final double TELLING_RATIO = 0.03;

  /** From here on a cause may be named to a customer as what it is (1) [judgement]. */
  private static final double NAMED_PROBABILITY = 0.8;

  private static final int TOLD = 3;

  private Reasons() {}

  /** A probability as people read it. */
  public static Argument percent(double probability) {
    double percent = 100 * probability;
    String text =
        percent >= 99.5 && probability < 1
            ? "> 99 %"
            : percent < 1 && percent > 0 ? "< 1 %" : Math.round(percent) + " %";
    return Argument.text(text);
  }

  /** The name of a cause. */
  public static Message name(Cause cause) {
    List<FaultKind> kinds = cause.kinds();
    if (kinds.isEmpty()) {
      return Message.of(MessageKey.CAUSE_HEALTHY);
    }
    return kinds.size() == 1
        ? Message.of(MessageKey.NAMED, Argument.name(kinds.get(0)))
        : Message.of(
            MessageKey.CAUSE_BOTH, Argument.name(kinds.get(0)), Argument.name(kinds.get(1)));
  }

  /** The name of a check, as something to do. */
  public static Message name(Check check) {
    if (check instanceof Check.Looked looked) {
      return at(looked.look(), looked.occasion(), Occasion.of(looked.look()));
    } else if (check instanceof Check.Read read) {
      return at(read.test(), read.occasion(), Occasion.of(read.test()));
    }
    return Message.of(check instanceof Check.Call ? MessageKey.CHECK_CALL : MessageKey.CHECK_LIGHT);
  }

  private static Message at(Enum<?> work, Occasion occasion, List<Occasion> choice) {
    return choice.size() == 1
        ? Message.of(MessageKey.NAMED, Argument.name(work))
        : Message.of(MessageKey.CHECK_AT, Argument.name(work), Argument.name(occasion));
  }

  /** What came of a check. */
  public static Message said(Outcome outcome) {
    if (outcome instanceof Outcome.Found found) {
      return Message.of(MessageKey.NAMED, Argument.name(found.what()));
    } else if (outcome instanceof Outcome.Amps amps) {
      return said(amps);
    } else if (outcome instanceof Outcome.Volts volts) {
      return Message.of(
          MessageKey.OUTCOME_ALTERNATING,
          new Quantity(volts.alternatingRmsVolts(), Dimension.VOLTAGE));
    } else if (outcome instanceof Outcome.Unsure unsure) {
      return Message.of(
          MessageKey.OUTCOME_UNSURE,
          unsure.what().stream()
              .sorted(Comparator.comparing(Enum::ordinal))
              .map(w -> Argument.name(w))
              .reduce((a, b) -> Argument.nested(Message.of(MessageKey.OUTCOME_OR, a, b)))
              .orElseThrow());
    }
    return Message.of(MessageKey.OUTCOME_NOT_REACHED);
  }

  private static Message said(Outcome.Amps amps) {
    if (Double.isNaN(amps.meanAmps())) {
      return Message.of(MessageKey.OUTCOME_ALTERNATING, current(amps.alternatingRmsAmps()));
    }
    return Double.isNaN(amps.alternatingRmsAmps())
        ? Message.of(MessageKey.OUTCOME_DIRECT, current(amps.meanAmps()))
        : Message.of(
            MessageKey.OUTCOME_BOTH, current(amps.meanAmps()), current(amps.alternatingRmsAmps()));
  }

  private static Argument current(double amps) {
    return new Quantity(amps, Dimension.CURRENT);
  }

  /** A line of the log. */
  public static Message line(Entry entry) {
    if (entry instanceof Entry.Repaired repaired) {
      return Message.of(
          MessageKey.DIAGNOSIS_STEP,
          Argument.name(repaired.repair()),
          Argument.name(repaired.result()));
    } else if (entry instanceof Entry.Observed observed) {
      return Message.of(
          MessageKey.DIAGNOSIS_STEP,
          Argument.nested(name(observed.check())),
          Argument.nested(said(observed.outcome())));
    }
    throw new IllegalStateException("no words for " + entry);
  }

  /** What a line of the log did, the most telling first. */
  public static List<Message> of(Step step) {
    List<Message> told = new ArrayList<>();
    if (step.surprising()) {
      told.add(Message.of(MessageKey.DIAGNOSIS_SURPRISE, percent(step.expectedProbability())));
    }
    step.after().keySet().stream()
        .filter(c -> Math.abs(moved(step, c)) >= TELLING_RATIO)
        .sorted(
            Comparator.comparingDouble((Cause c) -> -Math.abs(moved(step, c)))
                .thenComparing(Cause::id))
        .limit(TOLD)
        .map(c -> moving(step, c))
        .forEach(told::add);
    if (told.isEmpty()) {
      told.add(Message.of(MessageKey.DIAGNOSIS_NOTHING));
    }
    return told;
  }

  private static double moved(Step step, Cause cause) {
    return step.after().getOrDefault(cause, 0.0) - step.before().getOrDefault(cause, 0.0);
  }

  private static Message moving(Step step, Cause cause) {
    return Message.of(
        moved(step, cause) > 0 ? MessageKey.DIAGNOSIS_RAISED : MessageKey.DIAGNOSIS_LOWERED,
        Argument.nested(name(cause)),
        percent(step.before().getOrDefault(cause, 0.0)),
        percent(step.after().getOrDefault(cause, 0.0)));
  }

  /** What to do next. */
  public static List<Message> next(Advice advice) {
    List<Message> said = new ArrayList<>();
    if (advice.nextCheck().isPresent()) {
      CheckAdvice check = advice.nextCheck().get();
      said.add(
          Message.of(
              MessageKey.DIAGNOSIS_NEXT_CHECK,
              Argument.nested(name(check.check())),
              Argument.text(decimal(check.gainBits())),
              minutes(check.effortSeconds()),
              minutes(check.worthSeconds())));
    } else if (advice.nextRepair().isEmpty()) {
      said.add(Message.of(MessageKey.DIAGNOSIS_DONE, percent(advice.healthyProbability())));
    } else {
      RepairAdvice repair = advice.nextRepair().get();
      said.add(
          Message.of(
              MessageKey.DIAGNOSIS_NEXT_REPAIR,
              Argument.name(repair.repair()),
              percent(repair.curesProbability())));
      if (repair.spoiltBits() > Adviser.REDUNDANT_BITS) {
        said.add(
            Message.of(MessageKey.DIAGNOSIS_SPOILS, Argument.text(decimal(repair.spoiltBits()))));
      }
    }
    return said;
  }

  /** One sentence that a technician can say to the customer. */
  public static Message customer(Belief belief, Advice advice) {
    List<Map.Entry<Cause, Double>> causes = List.copyOf(belief.now().entrySet());
    if (advice.nextRepair().isEmpty()) {
      return Message.of(MessageKey.CUSTOMER_DONE);
    }
    Argument first = Argument.nested(name(causes.get(0).getKey()));
    if (advice.nextCheck().isPresent() && causes.get(0).getValue() < NAMED_PROBABILITY) {
      CheckAdvice check = advice.nextCheck().get();
      Argument second = Argument.nested(name(causes.get(1).getKey()));
      if (check.check().remembered()) {
        return Message.of(MessageKey.CUSTOMER_ASK, first, second);
      }
      return Message.of(
          MessageKey.CUSTOMER_CHECK,
          first,
          second,
          Argument.nested(name(check.check())),
          Argument.count(check.check().minutes()));
    }
    RepairAdvice repair = advice.nextRepair().get();
    return Message.of(
        MessageKey.CUSTOMER_REPAIR,
        first,
        Argument.name(repair.repair()),
        Argument.count(repair.repair().minutes()));
  }

  private static Argument minutes(double seconds) {
    return Argument.count(Math.round(seconds / 60));
  }

  /** Two decimals with the dot of a formula: bits are for whoever wants to follow the sum. */
  private static String decimal(double bits) {
    return String.format(Locale.ROOT, "%.2f", bits);
  }
}
