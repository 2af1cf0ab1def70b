package halfwave.lesson;

import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.circuit.Part;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A short demonstration on the standard bench: it starts, it runs, the lead is pulled. */
final class Lessons {

  static final long RUNNING_MILLIS = 60_000;

  static final InSenseLead SERIES = new InSenseLead(LeadEnd.BOARD, true);

  private Lessons() {}

  static Words words(String text) {
    return new Words(Map.of("en", text));
  }

  static Answer answer(Claim... claims) {
    return new Answer(words("so"), List.of(claims));
  }

  static Step step(Question question, Play play, Claim... claims) {
    return new Step(
        words("heading"),
        words("say"),
        question,
        play,
        null,
        List.of(claims),
        Set.of(Part.CONNECTOR));
  }

  static Play start() {
    return new Play(
        List.of(
            new Act(
                0,
                new Deed.HookOn(
                    Meter.fresh(ShippedMeters.service()), MeterFunction.DC_MICROAMPS, SERIES)),
            new Act(4000, new Deed.Supply(true)),
            new Act(5000, new Deed.Call(true))),
        RUNNING_MILLIS,
        1);
  }

  /** What is done and how long it lasts. */
  static Play pull() {
    return new Play(
        List.of(
            new Act(
                500,
                new Deed.Alter(Change.Turned.to(Parameter.CONNECTOR, Double.POSITIVE_INFINITY)))),
        10_000,
        2);
  }

  static Demonstration demonstration(Step... steps) {
    return new Demonstration(
        "a-short-one",
        words("title"),
        words("about"),
        ShippedBenches.standard(),
        null,
        7,
        start(),
        List.of(steps));
  }
}
