package halfwave.gui.presentation.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Ignition;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Occasion;
import halfwave.diagnosis.Outcome;
import halfwave.evidence.Course;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.Intent;
import halfwave.io.evidence.CaseCache;
import halfwave.sequence.Deed;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Evidence in the window: what is typed or looked at moves the probabilities, nothing else does.
 */
class EvidenceTest {

  private static final Check.Read SERIES = new Check.Read(MeterTest.SERIES_CURRENT, Occasion.TRIAL);
  private static final Check.Read VOLTS =
      new Check.Read(MeterTest.TERMINAL_VOLTS_LEAD_OFF, Occasion.STANDBY);

  private final DirectBench bench = DirectBench.standing();
  private final List<Throwable> failures = new ArrayList<>();
  private final EvidenceModel model =
      new EvidenceModel(new CaseCache(null), Runnable::run, Runnable::run, failures::add);

  private EvidenceAnswer answer() {
    model.want(bench.shown());
    assertThat(failures).isEmpty();
    return Objects.requireNonNull(model.answer());
  }

  private EvidenceView view() {
    return EvidenceView.of(answer(), DirectBench.ENGLISH);
  }

  @Test
  void aLineMovesTheBarsAndItsRemovalMovesThemBack() {
    EvidenceView start = view();
    model.add(new Entry.Observed(new Check.Call(), new Outcome.Found(Course.GOES_OUT)));
    EvidenceView after = view();
    assertThat(after.found()).hasSize(1);
    assertThat(after.found().get(0).reasons()).isNotEmpty();
    assertThat(after.causes()).isNotEqualTo(start.causes());
    assertThat(after.causes()).anySatisfy(b -> assertThat(b.before()).isNotEqualTo(b.after()));
    model.remove(0);
    assertThat(view().causes()).isEqualTo(start.causes());
  }

  @Test
  void itSaysWhatNextAndWhatToTellTheCustomer() {
    model.want(bench.shown());
    model.add(new Entry.Observed(new Check.Call(), new Outcome.Found(Course.GOES_OUT)));
    assertThat(view().next().get(0)).startsWith("Next: ");
    assertThat(view().customer()).startsWith("\"");
    assertThat(view().checks())
        .isNotEmpty()
        .allSatisfy(o -> assertThat(o.share()).isBetween(0.0, 1.0));
    model.add(new Entry.Repaired(Repair.CLEAN_ROD_WITH_PAD, Entry.Result.UNCHANGED));
    assertThat(view().found()).hasSize(2);
    model.clear();
    assertThat(view().found()).isEmpty();
  }

  /** A look is a look at this bench; the probabilities by themselves know nothing of it. */
  @Test
  void onlyALookTellsOfTheBench() {
    var before = answer().belief().now();
    List<Deed> deeds = new ArrayList<>();
    Fault.typical(FaultKind.GROUND_LOST).changes().forEach(c -> deeds.add(new Deed.Alter(c)));
    bench.want(new Intent.Act(deeds, 0));
    assertThat(answer().belief().now()).isEqualTo(before);
    model.look(new Check.Looked(Look.BOND_RESISTANCE, Occasion.STANDBY));
    assertThat(answer().belief().now().keySet().iterator().next())
        .isEqualTo(Cause.of(FaultKind.GROUND_LOST));
  }

  /** A reading that is not there is no zero. */
  @Test
  void withoutAFlameThereIsNoReadingInFlame() {
    assertThat(EvidenceLook.at(SERIES, DirectBench.standing().shown()))
        .isInstanceOfAny(Outcome.NotReached.class, Outcome.Amps.class);
    for (Check check : Check.all(Ignition.HOT_SURFACE)) {
      assertThat(EvidenceLook.at(check, bench.shown())).as(check.id()).isNotNull();
    }
  }

  @ParameterizedTest
  @CsvSource({"2.4, 2.4e-6", "'2,4', 2.4e-6", "2.4uA, 2.4e-6", "-0.1, -0.1e-6", "2.4 µA, 2.4e-6"})
  void bareNumbersAreMicroamps(String text, double amps) {
    EvidenceWords.Typed typed = EvidenceWords.typed(SERIES, text, DirectBench.ENGLISH);
    assertThat(typed.refusal()).isEmpty();
    assertThat(typed.outcome()).isEqualTo(Outcome.Amps.ofMean(amps));
  }

  @ParameterizedTest
  @CsvSource({"84, 84", "84 V, 84", "'89,5', 89.5"})
  void bareNumbersAreVolts(String text, double volts) {
    assertThat(EvidenceWords.typed(VOLTS, text, DirectBench.ENGLISH).outcome())
        .isEqualTo(new Outcome.Volts(volts));
  }

  @ParameterizedTest
  @CsvSource({"much", "''", "2.4A", "900000", "none|some", "1/2/3"})
  void whatIsNoReadingIsRefusedInALine(String text) {
    EvidenceWords.Typed typed = EvidenceWords.typed(SERIES, text, DirectBench.ENGLISH);
    assertThat(typed.outcome()).isNull();
    assertThat(typed.refusal()).contains("microamps").doesNotContain("\n");
  }
}
