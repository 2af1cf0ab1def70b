package halfwave.gui.presentation.bench;

import halfwave.circuit.Point;
import halfwave.display.MeterText;
import halfwave.display.Sentences;
import halfwave.gui.presentation.Wording;
import halfwave.instrument.HookUp;
import halfwave.instrument.Measurement;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.Shown;
import halfwave.instrument.SupplyPoint;
import halfwave.sequence.Hooked;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The meter as a technician sees it.
 *
 * @param number the large figure, or words where there is none
 * @param unit its unit and kind; empty beside words
 * @param beside a second figure, or empty
 * @param place where the leads are
 * @param details what kind of meter it is and how its fuse is
 * @param cautions what is wrong or dangerous about this use
 * @param on whether it is on the bench
 * @param alarm what is wrong with the meter itself, or empty
 * @param fuseIntact whether its current inputs conduct
 * @param alive whether it works at all
 * @param function what the dial is set to
 * @param spoken all of it in one sentence, for who hears the screen
 */
public record MeterView(
    String number,
    String unit,
    String beside,
    String place,
    String details,
    List<String> cautions,
    boolean on,
    String alarm,
    boolean fuseIntact,
    boolean alive,
    MeterFunction function,
    String spoken) {

  /** How a meter lies in the bag: set to what flame current is measured with. */
  private static final MeterFunction UNTURNED = MeterFunction.DC_MICROAMPS;

  /** The view of a state. */
  public static MeterView of(State state, Wording words) {
    Hooked hooked = state.moment().hooked();
    Meter meter = state.standing().meter();
    Optional<Measurement> measured = state.readout().measured();
    String details = details(meter, words);
    if (hooked == null || measured.isEmpty()) {
      String off = words.text("meter.off");
      MeterFunction dial = Objects.requireNonNullElse(state.standing().dial(), UNTURNED);
      return new MeterView(
          "– – –",
          words.text(key(dial)),
          "",
          off,
          details,
          List.of(),
          false,
          alarm(meter, words),
          meter.fuseIntact(),
          meter.alive(),
          dial,
          off);
    }
    Shown shown = measured.get().shown();
    String text = MeterText.text(large(shown), words.sentences());
    String beside =
        shown instanceof Shown.Both both
            ? MeterText.text(new Shown.Alternating(both.alternating()), words.sentences())
            : "";
    int space = split(shown, text);
    String place = hooked.opening() ? words.text("meter.opening") : place(hooked.hookUp(), words);
    return new MeterView(
        text.substring(0, space),
        text.substring(space).strip(),
        beside,
        place,
        details,
        cautions(state, measured.get(), words),
        true,
        alarm(meter, words),
        meter.fuseIntact(),
        meter.alive(),
        hooked.function(),
        words.text("meter.spoken", text, words.sentences().name(hooked.function()), place));
  }

  /** What is printed beside a position of the dial, in the bundle. */
  public static String key(MeterFunction function) {
    return "function." + function.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static List<String> cautions(State state, Measurement measured, Wording words) {
    List<String> cautions = new ArrayList<>();
    measured.cautions().stream().map(words.sentences()::sentence).forEach(cautions::add);
    if (SenseLead.openedWhileBurning(state)) {
      cautions.add(words.text("meter.lead-opened"));
    }
    return cautions.stream().distinct().toList();
  }

  private static String alarm(Meter meter, Wording words) {
    if (!meter.alive()) {
      return words.text("meter.alarm-destroyed");
    }
    return meter.fuseIntact() ? "" : words.text("meter.alarm-fuse");
  }

  private static Shown large(Shown shown) {
    return shown instanceof Shown.Both both ? new Shown.Direct(both.direct()) : shown;
  }

  /** Where the number ends and its unit begins; words stay whole. */
  private static int split(Shown shown, String text) {
    boolean figure =
        shown instanceof Shown.Direct
            || shown instanceof Shown.Alternating
            || shown instanceof Shown.Both
            || shown instanceof Shown.Ohms;
    int space = text.indexOf(' ') < 0 ? text.indexOf('\u202f') : text.indexOf(' ');
    return figure && space > 0 ? space : text.length();
  }

  private static String details(Meter meter, Wording words) {
    String model = words.sentences().meter(meter.model().name()).orElse(meter.model().name());
    String fuse =
        words.text(
            !meter.alive()
                ? "meter.destroyed"
                : meter.fuseIntact() ? "meter.fuse-good" : "meter.fuse-blown");
    return words.text("meter.details", Wording.capital(model), fuse);
  }

  /** Where leads are, in words. */
  public static String place(HookUp hookUp, Wording words) {
    Sentences names = words.sentences();
    if (hookUp instanceof HookUp.InSenseLead series) {
      return words.text(
          series.redTowardsBoard() ? "meter.series" : "meter.series-swapped",
          names.name(series.end()));
    } else if (hookUp instanceof HookUp.Across across) {
      return words.text("meter.across", point(across.red(), words), point(across.black(), words));
    } else if (hookUp instanceof HookUp.WireInFlame wire) {
      return words.text(
          wire.redOnWire() ? "meter.wire" : "meter.wire-swapped", point(wire.other(), words));
    } else if (hookUp instanceof HookUp.AcrossSupply supply) {
      return words.text("meter.across", supply(supply.red(), words), supply(supply.black(), words));
    }
    throw new IllegalStateException("no words for " + hookUp);
  }

  /** The name of a point that a lead reaches. */
  public static String point(Point point, Wording words) {
    return words.text("point." + point.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private static String supply(SupplyPoint point, Wording words) {
    return words.sentences().name(point);
  }
}
