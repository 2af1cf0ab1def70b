package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.Sensing;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow.Taken;
import halfwave.gui.presentation.bench.State;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class WhatIfViewTest {

  private static WhatIf.Answer all(WhatIf whatIf, State state, Parameter parameter) {
    ChartStates.Ear<WhatIf.Answer> ear = new ChartStates.Ear<>(Integer.MAX_VALUE);
    whatIf.answer(WhatIf.Question.of(state, parameter, false), ear);
    return ear.last();
  }

  private static Sensing sensing(State state) {
    return state.moment().settings().sensing();
  }

  @Test
  void showsWhatASweepFinds() {
    State state = ChartStates.turned(Parameter.CONNECTOR, 2e6);
    WhatIf.Answer answer = all(new WhatIf(), state, Parameter.ROD_FILM);
    WhatIfView view = WhatIfView.of(answer, sensing(state), ChartStates.ENGLISH);
    WhatIfRange range = answer.question().range();
    Sweep same =
        Sweep.of(
            state.moment().bench(),
            List.of(range.axis(Parameter.ROD_FILM, view.points().si().length)));
    for (int k = 0; k < same.rows().size(); k++) {
      Taken taken = same.rows().get(k).taken().orElseThrow();
      assertThat(1e-6 * view.points().dc()[k])
          .isCloseTo(taken.seriesMeanAmps(), Offset.offset(1e-15));
      assertThat(view.amps().value(view.ac().levels()[k]))
          .isCloseTo(1e6 * taken.seriesAlternatingRmsAmps(), Offset.offset(1e-9));
    }
    assertThat(view.healthy()).isNotNull();
    assertThat(view.here().at()).isEqualTo(0);
    assertThat(view.summary()).contains("Crosses drop-out at");
  }

  @Test
  void turningThatVeryNumberMovesOnlyTheMark() {
    WhatIf whatIf = new WhatIf();
    State before = ChartStates.running();
    WhatIf.Answer first = all(whatIf, before, Parameter.ROD_FILM);
    State after = ChartStates.turned(Parameter.ROD_FILM, 30e-6);
    WhatIf.Answer second = all(whatIf, after, Parameter.ROD_FILM);
    assertThat(second.sweep()).isSameAs(first.sweep());
    assertThat(second.microamps().seriesMeanAmps()).isLessThan(first.microamps().seriesMeanAmps());
    WhatIfView view = WhatIfView.of(second, sensing(after), ChartStates.ENGLISH);
    // the mark lies on the curve between its neighbours, as far as straight pieces follow it
    Probe near = view.probe(view.here().at(), ChartStates.ENGLISH);
    assertThat(view.here().dc()).isCloseTo(near.levels().get(0), Offset.offset(0.02));
  }

  @Test
  void coarseCurvesComeFirstAndCanBeGivenUp() {
    ChartStates.Ear<WhatIf.Answer> ear = new ChartStates.Ear<>(2);
    WhatIf whatIf = new WhatIf();
    State state = ChartStates.running();
    whatIf.answer(WhatIf.Question.of(state, Parameter.CONNECTOR, false), ear);
    assertThat(ear.told).extracting(a -> a.sweep().rows().size()).containsExactly(9, 17);
    // what was given up is not taken for the whole
    assertThat(all(whatIf, state, Parameter.CONNECTOR).sweep().rows()).hasSize(65);
  }

  @Test
  void everyNumberHasARange() {
    Bench bench = ShippedBenches.standard();
    for (Parameter parameter : Parameter.values()) {
      for (boolean full : new boolean[] {false, true}) {
        WhatIfRange range = WhatIfRange.of(parameter, bench, bench, full);
        assertThat(range.axis(parameter, 9).values()).as(parameter.id()).hasSize(9);
      }
    }
  }

  @Test
  void whatTheReadingDoesNotDependOnIsSaid() {
    State state = ChartStates.running();
    WhatIf.Answer answer = all(new WhatIf(), state, Parameter.SILICON);
    assertThat(WhatIfView.of(answer, sensing(state), ChartStates.ENGLISH).summary())
        .contains("does not depend");
  }
}
