package halfwave.explain;

import halfwave.board.Sensing;
import halfwave.board.Stage;
import halfwave.circuit.SteadyState;
import halfwave.flame.FlameSheets;
import halfwave.instrument.Measurement;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.sequence.Hooked;
import java.util.ArrayList;
import java.util.List;

/**
 * The account of a moment in plain words, as messages in the order of reading.
 *
 * @param verdict what leaves the board, what that is worth to it, and what flame there is
 * @param halfCycles what each half-cycle passes, and what limits it
 * @param findings what is not as it should be
 * @param depends what the DC depends on most
 * @param meter what the meter does to the circuit, and what is wrong about its use
 * @param board what the board is doing, and why
 */
public record MomentAccount(
    List<Message> verdict,
    List<Message> halfCycles,
    List<Message> findings,
    List<Message> depends,
    List<Message> meter,
    List<Message> board) {

  /** A meter that changes the DC by less than this changes nothing that anyone would see (1). */
  private static final double SLIGHT_RATIO = 0.02;

  /**
   * With a smaller share of DC than this something is wrong with the rectifying itself (1): about
   * half of the 0.3 that the model's healthy benches have; resistance in series lowers both alike.
   */
  private static final double HARDLY_RATIO = 0.15;

  /** Takes copies. */
  public MomentAccount {
    verdict = List.copyOf(verdict);
    halfCycles = List.copyOf(halfCycles);
    findings = List.copyOf(findings);
    depends = List.copyOf(depends);
    meter = List.copyOf(meter);
    board = List.copyOf(board);
  }

  /**
   * Tells a moment's answer.
   *
   * @param answer the answer
   * @param causes why the board went where it is, in order of time
   */
  public static MomentAccount of(MomentAnswer answer, List<Message> causes) {
    boolean burns = answer.lit() && answer.flame().burning();
    double dc = MomentAnswer.senseAmps(answer.loaded());
    boolean signal = dc > Account.NOTHING_AMPS;
    VoltageLadder positive = answer.rodPositive();
    VoltageLadder negative = answer.rodNegative();
    boolean cycles =
        burns && answer.powered() && Findings.rodInFlame(answer.bench(), answer.flame());
    return new MomentAccount(
        verdict(answer, burns, dc),
        cycles && positive != null && negative != null
            ? halfCycles(answer, positive, negative, signal)
            : List.of(),
        Findings.all(answer.bench(), answer.flame()),
        burns && signal
            ? Account.told(answer.elasticities()).stream().map(MomentAccount::sways).toList()
            : List.of(),
        meter(answer),
        board(answer, causes));
  }

  private static List<Message> halfCycles(
      MomentAnswer answer, VoltageLadder positive, VoltageLadder negative, boolean signal) {
    List<Message> said = new ArrayList<>(HalfCycles.of(positive, negative, signal));
    FittedRod fitted = answer.fitted();
    if (fitted != null && signal) {
      said.add(
          Message.of(
              MessageKey.ACCOUNT_ROD_IN_FLAME,
              length(FittedRod.lengthMeters(answer.bench(), answer.flame())),
              length(fitted.lengthMeters())));
      said.add(
          Message.of(
              MessageKey.ACCOUNT_ROD_MOVED,
              amps(Math.abs(positive.flameAmps())),
              amps(fitted.positiveAmps()),
              amps(Math.abs(negative.flameAmps())),
              amps(fitted.negativeAmps()),
              amps(MomentAnswer.senseAmps(answer.loaded())),
              amps(fitted.dcAmps())));
    }
    return said;
  }

  private static Argument length(double si) {
    return Argument.quantity(si, Dimension.LENGTH);
  }

  private static List<Message> verdict(MomentAnswer answer, boolean burns, double dc) {
    List<Message> said = new ArrayList<>();
    if (!answer.powered()) {
      said.add(Message.of(MessageKey.ACCOUNT_NO_POWER));
    } else if (answer.loaded() instanceof SteadyState.Failed failed) {
      said.add(
          Message.of(
              MessageKey.ACCOUNT_UNSOLVED,
              Argument.name(failed.failure()),
              Argument.name(failed.part())));
    } else if (burns) {
      said.add(judged(answer, dc));
      double ac = MomentAnswer.alternatingAmps(answer.loaded());
      boolean hardly = Math.abs(dc) < HARDLY_RATIO * ac;
      if (hardly && dc > -Account.NOTHING_AMPS && ac >= Account.PLENTY_ALTERNATING_AMPS) {
        said.add(Message.of(MessageKey.ACCOUNT_CONDUCTS_ONLY));
      }
    }
    said.addAll(flame(answer, burns));
    return said;
  }

  private static Message judged(MomentAnswer answer, double dc) {
    Sensing sensing = answer.moment().settings().sensing();
    Argument amps = amps(dc);
    Argument ac = amps(MomentAnswer.alternatingAmps(answer.loaded()));
    if (dc >= sensing.warningAmps()) {
      return Message.of(MessageKey.ACCOUNT_SENSE_GOOD, amps, ac, amps(sensing.warningAmps()));
    } else if (dc >= sensing.dropOutAmps()) {
      return Message.of(MessageKey.ACCOUNT_SENSE_WEAK, amps, ac, amps(sensing.dropOutAmps()));
    } else if (dc > Account.NOTHING_AMPS) {
      return Message.of(MessageKey.ACCOUNT_SENSE_SMALL, amps, ac, amps(sensing.dropOutAmps()));
    }
    return Message.of(
        dc < -Account.NOTHING_AMPS
            ? MessageKey.ACCOUNT_SENSE_REVERSED
            : MessageKey.ACCOUNT_SENSE_NOTHING,
        amps,
        ac);
  }

  private static List<Message> flame(MomentAnswer answer, boolean burns) {
    FlameSheets sheets = answer.flame().field().sheets();
    if (burns) {
      return List.of(
          Message.of(
              MessageKey.ACCOUNT_FLAME,
              Argument.name(sheets.state()),
              Argument.quantity(sheets.mixture().firingWatts(), Dimension.POWER),
              Argument.quantity(sheets.mixture().equivalenceRatio(), Dimension.NUMBER)));
    } else if (!answer.flame().burning()) {
      return List.of(Message.of(MessageKey.ACCOUNT_NO_FLAME, Argument.name(sheets.state())));
    }
    boolean elsewhere = answer.moment().furnace().burning();
    Message unlit =
        Message.of(elsewhere ? MessageKey.ACCOUNT_NOT_AT_ROD : MessageKey.ACCOUNT_UNLIT);
    return answer.powered() ? List.of(unlit, ifLit(answer)) : List.of(unlit);
  }

  /** Where nothing burns, the circuit's own part in it shows in what a flame would give. */
  private static Message ifLit(MomentAnswer answer) {
    return Message.of(
        MessageKey.ACCOUNT_IF_LIT,
        amps(MomentAnswer.senseAmps(answer.loaded())),
        amps(MomentAnswer.alternatingAmps(answer.loaded())),
        amps(answer.moment().settings().sensing().pickUpAmps()));
  }

  private static Message sways(Elasticity e) {
    return Message.of(
        MessageKey.ACCOUNT_SWAYS,
        Argument.name(e.parameter()),
        Argument.quantity(e.dcElasticityRatio() / 100, Dimension.RATIO));
  }

  private static List<Message> meter(MomentAnswer answer) {
    Hooked hooked = answer.moment().hooked();
    if (hooked == null) {
      return List.of(Message.of(MessageKey.ACCOUNT_METER_NONE));
    } else if (hooked.opening()) {
      return List.of(Message.of(MessageKey.ACCOUNT_METER_OPENING));
    }
    List<Message> said = new ArrayList<>();
    if (answer.powered() && answer.flame().burning()) {
      said.add(load(answer));
    }
    answer.measured().map(Measurement::cautions).ifPresent(said::addAll);
    return said;
  }

  private static Message load(MomentAnswer answer) {
    double without = MomentAnswer.senseAmps(answer.bare());
    double with = MomentAnswer.senseAmps(answer.loaded());
    double needed = answer.moment().settings().sensing().dropOutAmps();
    boolean cut = without >= needed && with < needed;
    if (Math.max(Math.abs(without), Math.abs(with)) <= Account.NOTHING_AMPS) {
      return Message.of(MessageKey.ACCOUNT_METER_IDLE);
    }
    double change = Math.abs(with - without);
    boolean slight = change <= SLIGHT_RATIO * Math.abs(without);
    return Message.of(
        cut
            ? MessageKey.ACCOUNT_METER_CUTS
            : slight ? MessageKey.ACCOUNT_METER_SLIGHT : MessageKey.ACCOUNT_METER_LOADS,
        amps(without),
        amps(with));
  }

  private static List<Message> board(MomentAnswer answer, List<Message> causes) {
    List<Message> said = new ArrayList<>();
    Stage stage = answer.moment().board().stage();
    said.add(Message.of(MessageKey.ACCOUNT_BOARD, Argument.name(stage)));
    said.addAll(causes);
    return said;
  }

  private static Argument amps(double si) {
    return Argument.quantity(si, Dimension.CURRENT);
  }
}
