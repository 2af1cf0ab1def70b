package halfwave.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Point;
import halfwave.flame.ElectrodeCharacteristic;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What every function keeps on every hook-up, in every state of circuit and meter. */
class MeasuringContractTest {

  private static final Subject BURNING = Subject.of(SenseCircuits.burning());

  private static List<HookUp> hookUps() {
    ElectrodeCharacteristic wire = ElectrodeCharacteristic.squareRoot(0.35e-6);
    List<HookUp> all = new ArrayList<>();
    for (Point red : HookUp.REACHABLE) {
      for (Point black : HookUp.REACHABLE) {
        all.add(new Across(red, black));
      }
      all.add(new WireInFlame(wire, red, true));
    }
    for (LeadEnd end : LeadEnd.values()) {
      all.add(new InSenseLead(end, true));
    }
    for (SupplyPoint red : SupplyPoint.values()) {
      for (SupplyPoint black : SupplyPoint.values()) {
        all.add(new AcrossSupply(red, black));
      }
    }
    return all;
  }

  private static Stream<Arguments> cases() {
    return Stream.of(MeterFunction.values())
        .flatMap(f -> hookUps().stream().map(h -> Arguments.of(f, h)));
  }

  private static List<Subject> subjects() {
    return List.of(
        BURNING,
        BURNING.unpowered(),
        BURNING.whileSparking(),
        new Subject(SenseCircuits.leadOff(), Supply.CORRECT.lineReversed(), false, false));
  }

  private static List<Figure> figures(Shown shown) {
    if (shown instanceof Shown.Both both) {
      return List.of(both.alternating(), both.direct());
    } else if (shown instanceof Shown.Alternating alternating) {
      return List.of(alternating.figure());
    } else if (shown instanceof Shown.Direct direct) {
      return List.of(direct.figure());
    } else if (shown instanceof Shown.Ohms ohms) {
      return List.of(ohms.figure());
    }
    return List.of();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void noMistakeThrowsAndEveryFigureStandsOnItsLastDigit(MeterFunction function, HookUp hookUp) {
    for (MeterModel model : ShippedMeters.all()) {
      Meter fresh = Meter.fresh(model);
      for (Meter meter : List.of(fresh, fresh.withBlownFuse(), fresh.destroyed())) {
        for (Subject subject : subjects()) {
          Measurement m = Measuring.of(meter, function, hookUp, subject, Look.settled(2));
          assertThat(m.shown()).isNotInstanceOf(Shown.Unsolved.class);
          List<Figure.Value> values =
              figures(m.shown()).stream()
                  .filter(Figure.Value.class::isInstance)
                  .map(Figure.Value.class::cast)
                  .toList();
          for (Figure.Value value : values) {
            assertThat(value.quantity().dimension()).isEqualTo(function.dimension());
            double steps = value.quantity().si() / value.resolution().si();
            // a product and a quotient of doubles, with up to 6000 steps
            assertThat(steps).isCloseTo(Math.rint(steps), within(1e-9));
            // no range has more
            assertThat(Math.abs(steps)).isLessThan(6001);
          }
        }
      }
    }
  }

  /** Rounding to the ideal meter's last digit and of volts over ohms; DC turns, AC does not. */
  @ParameterizedTest
  @MethodSource("cases")
  void swappedLeadsTurnDirectFiguresAndNoOthers(MeterFunction function, HookUp hookUp) {
    List<Double> one = numbers(function, hookUp);
    List<Double> other = numbers(function, hookUp.swapped());
    double sign = function.showsDirect() && !function.showsAlternating() ? -1 : 1;
    if (function == MeterFunction.AC_AND_DC_MICROAMPS) {
      other = List.of(other.get(0), -other.get(1));
    }
    for (int k = 0; k < one.size(); k++) {
      double expected = sign * other.get(k);
      // infinite where over range
      assertThat(one.get(k))
          .satisfiesAnyOf(
              x -> assertThat(x).isEqualTo(expected),
              x -> assertThat(x).isCloseTo(expected, within(1e-6 * Math.abs(expected) + 1e-9)));
    }
  }

  /** On a dead circuit for ohms, since no one knows what a live one shows. */
  private static List<Double> numbers(MeterFunction function, HookUp hookUp) {
    boolean dead = function.isResistance();
    Subject subject = dead ? Subject.of(SenseCircuits.leadOff()).unpowered() : BURNING;
    return figures(IdealMeters.measure(function, hookUp, subject).shown()).stream()
        .map(IdealMeters::si)
        .toList();
  }

  @Test
  void notANumberIsRefused() {
    for (double bad : new double[] {Double.NaN, Double.NEGATIVE_INFINITY}) {
      refused(() -> new Look(bad, 1, 1));
      refused(() -> new Supply(bad, 0, 0, 0));
      refused(() -> new Supply(0, bad, 0, 0));
      refused(() -> new Supply(0, 0, bad, 0));
      refused(() -> new Supply(0, 0, 0, bad));
      refused(() -> new Ohmmeter(bad, 1, 1));
      refused(() -> new Ohmmeter(1, bad, 1));
      refused(() -> new Ohmmeter(1, 1, bad));
      Quantity volt = new Quantity(1, Dimension.VOLTAGE);
      refused(() -> new Scale(volt, volt, bad, 0));
      refused(() -> new Scale(volt, volt, 0, bad));
      refused(() -> model(bad, 2, 0.4, 0.2));
      refused(() -> model(0.3, bad, 0.4, 0.2));
      refused(() -> model(0.3, 2, bad, 0.2));
      refused(() -> model(0.3, 2, 0.4, bad));
    }
  }

  private static MeterModel model(double seconds, double clamp, double fuse, double leads) {
    MeterModel m = ShippedMeters.plain();
    return new MeterModel(
        m.name(),
        m.voltage(),
        m.lowImpedance(),
        m.microamps(),
        m.milliamps(),
        m.ohmmeter(),
        m.method(),
        seconds,
        m.refreshMillis(),
        clamp,
        fuse,
        leads,
        m.scales());
  }

  @Test
  void whatNoLeadReachesIsRefused() {
    for (Point inside : List.of(Point.EMF, Point.FEED, Point.PLASMA, Point.OPENED, Point.WIRE)) {
      refused(() -> new Across(inside, Point.COMMON));
      refused(() -> new Across(Point.COMMON, inside));
      refused(() -> new WireInFlame(ElectrodeCharacteristic.outOfFlame(), inside, true));
    }
  }

  private static void refused(ThrowingCallable making) {
    assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class);
  }
}
