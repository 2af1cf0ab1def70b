package halfwave.evidence;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.Disorder;
import halfwave.bench.Stages;
import halfwave.bench.Trigger;
import halfwave.board.BoardSettings;
import halfwave.board.Ignition;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Voltmeter;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import halfwave.sequence.Sample;
import halfwave.sequence.Scenes;
import halfwave.sequence.Segment;
import halfwave.sequence.SenseCurrent;
import halfwave.sequence.Sequence;
import halfwave.sequence.Timeline;
import halfwave.work.Look;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One heating call, looked at as a technician would. */
final class SymptomCall {

  private static final long CALL_MILLIS = 10_000;
  private static final long END_MILLIS = 610_000;
  private static final long UNTIL_MILLIS = 660_000;

  /** A clean furnace proves within this after its valve opens, whatever the board (ms). */
  private static final long PROMPT_MILLIS = 3_000;

  private static final long STANDBY_MILLIS = 8_000;

  private static final long START_MILLIS = 20_000;

  private static final List<Act> ACTS =
      List.of(
          new Act(0, new Deed.Damp(true)),
          new Act(0, new Deed.Supply(true)),
          new Act(CALL_MILLIS, new Deed.Call(true)),
          new Act(END_MILLIS, new Deed.Call(false)));

  private final Sequence sequence = new Sequence();
  private final Stages stages = new Stages();
  private final BoardSettings settings;

  SymptomCall(BoardSettings settings) {
    this.settings = settings;
  }

  /**
   * A call as it was played.
   *
   * @param call what came of it
   * @param segment all of it
   */
  record Played(HeatingCall call, Segment segment) {}

  Played played(Bench bench, long seed) {
    Timeline played = Timeline.from(Moment.cold(bench, settings, seed));
    played = played.then(until(played.end(), STANDBY_MILLIS));
    Moment standby = played.end();
    played = played.then(until(standby, START_MILLIS));
    Moment start = played.end();
    played = played.then(until(start, END_MILLIS));
    Moment end = played.end();
    played = played.then(until(end, UNTIL_MILLIS));
    Segment call = new Segment(played.start(), played.events(), played.samples(), played.end());
    return new Played(
        new HeatingCall(
            course(call),
            code(call),
            standby,
            start,
            firstEnd(call).map(e -> at(e, standby, start)),
            loss(call).map(e -> at(e, standby, start)),
            warm(call).map(s -> end)),
        call);
  }

  Symptoms symptoms(Bench bench, long seed) {
    Played played = played(bench, seed);
    HeatingCall call = played.call();
    Circuit dark = dark(bench.under(EnumSet.of(Trigger.DAMP)));
    Voltmeter meter = Voltmeter.HIGH_IMPEDANCE;
    return new Symptoms(
        call.course(),
        call.code(),
        meter.read(dark, Point.TERMINAL, Point.COMMON),
        meter.read(dark.without(Part.CONNECTOR), Point.TERMINAL, Point.COMMON),
        during(played.segment()).map(SymptomCall::reading),
        warm(played.segment()).map(SymptomCall::reading),
        new Sights(
            sight(call.standby()),
            sight(call.start()),
            call.trial().map(this::sight).orElse(Map.of()),
            call.loss().map(this::sight).orElse(Map.of()),
            call.warm().map(this::sight).orElse(Map.of())));
  }

  private Segment until(Moment from, long millis) {
    return sequence.advance(
        from,
        millis,
        ACTS.stream()
            .filter(a -> a.timeMillis() >= from.timeMillis() && a.timeMillis() < millis)
            .toList());
  }

  /** The moment of an event, played again from the nearest moment that is known. */
  private Moment at(Event event, Moment standby, Moment start) {
    Moment from = event.timeMillis() < START_MILLIS ? standby : start;
    return until(from, event.timeMillis()).end();
  }

  private Map<Look, Enum<?>> sight(Moment moment) {
    return Sights.of(Scenes.of(stages, moment));
  }

  private static Circuit dark(Bench bench) {
    boolean powered = !bench.condition().appliance().has(Disorder.DOOR_OPEN);
    Bench seen =
        powered
            ? bench
            : bench.with(
                bench.condition().withAppliance(bench.condition().appliance().withSenseSupply(0)));
    return BenchCircuit.withoutFlame(seen, new Stages().flame(seen));
  }

  private static MeterReading reading(Sample sample) {
    SenseCurrent sense = sample.sense();
    return sense.unsolved() == null
        ? new MeterReading.Amps(sense.meanAmps(), sense.alternatingRmsAmps())
        : new MeterReading.None(sense.unsolved());
  }

  private Course course(Segment call) {
    if (entered(call, Stage.FALSE_FLAME).anyMatch(e -> e.timeMillis() < END_MILLIS)) {
      return Course.SEES_FALSE_FLAME;
    }
    Optional<Event> opened = entered(call, Stage.TRIAL).findFirst();
    if (opened.isEmpty()) {
      return Course.DOES_NOT_START;
    }
    if (call.samples().stream().noneMatch(s -> s.litCount() > 0)) {
      return Course.DOES_NOT_LIGHT;
    }
    Optional<Event> ran = entered(call, Stage.RUN).findFirst();
    if (ran.isEmpty()) {
      return Course.GOES_OUT;
    }
    if (call.end().furnace().burning()) {
      return Course.DOES_NOT_STOP;
    }
    if (loss(call).isPresent()) {
      return Course.IS_LOST;
    }
    long prompt = PROMPT_MILLIS + settings.times().provingMillis();
    if (call.start().bench().design().ignition() == Ignition.SPARK_AND_SENSE) {
      // blind as long as it sparks
      prompt += settings.times().ignitionActivationMillis();
    }
    if (ran.get().timeMillis() - opened.get().timeMillis() > prompt) {
      return Course.PROVES_LATE;
    }
    return warm(call).filter(s -> s.code() == StatusCode.WEAK_FLAME).isPresent()
        ? Course.RUNS_WEAKLY
        : Course.RUNS;
  }

  /** The first trouble that the light tells during the call, or what it says at its end. */
  private static StatusCode code(Segment call) {
    List<StatusCode> codes =
        call.samples().stream()
            .filter(s -> s.timeMillis() >= CALL_MILLIS && s.timeMillis() < END_MILLIS)
            .map(Sample::code)
            .toList();
    if (codes.contains(StatusCode.SENSE_SHORTED)) {
      return StatusCode.SENSE_SHORTED;
    }
    StatusCode last = codes.isEmpty() ? StatusCode.DARK : codes.get(codes.size() - 1);
    return codes.stream().filter(SymptomCall::trouble).findFirst().orElse(last);
  }

  /** A signal is weak for a moment whenever it comes or goes. */
  private static boolean trouble(StatusCode code) {
    return switch (code) {
      case DARK, READY, STARTING, FLAME, WEAK_FLAME -> false;
      default -> true;
    };
  }

  /** The end of the first trial, well or badly. */
  private static Optional<Event> firstEnd(Segment call) {
    return call.events().stream().filter(e -> e.shutsGas() || e.enters(Stage.RUN)).findFirst();
  }

  /** The first loss of a proved flame during the call. */
  private static Optional<Event> loss(Segment call) {
    return call.events().stream()
        .filter(e -> e.timeMillis() < END_MILLIS && e.leaves(Stage.RUN))
        .findFirst();
  }

  /** The last look before the first trial ends, well or badly. */
  private static Optional<Sample> during(Segment call) {
    return firstEnd(call)
        .flatMap(
            e ->
                call.samples().stream()
                    .filter(s -> s.timeMillis() < e.timeMillis() && s.stage().gas())
                    .reduce((a, b) -> b));
  }

  private static Optional<Sample> warm(Segment call) {
    return call.samples().stream()
        .filter(s -> s.timeMillis() < END_MILLIS && s.timeMillis() >= END_MILLIS - 1000)
        .filter(s -> s.stage() == Stage.RUN)
        .reduce((a, b) -> b);
  }

  private static Stream<Event> entered(Segment call, Stage stage) {
    return call.events().stream().filter(e -> e.enters(stage));
  }
}
