package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.charts.HistoryView;
import halfwave.sequence.Deed;
import org.junit.jupiter.api.Test;

/** What board and history say is a sentence that can be read. */
class BoardWordsTest {

  @Test
  void oneFlashIsSingular() {
    BoardView view = BoardView.of(DirectBench.untouched(), DirectBench.SPANISH);
    BoardView one =
        new BoardView(
            view.headline(),
            view.light(),
            1,
            0,
            view.lockout(),
            view.signal(),
            view.gauge(),
            view.clock(),
            view.counts(),
            view.next(),
            view.cause(),
            view.spoken());

    assertThat(one.flashes(DirectBench.SPANISH)).isEqualTo("1 largo, 0 cortos");
  }

  @Test
  void theHistoryNamesFunctionAndPlaceOfAMeter() {
    State state =
        Benches.after(
            Benches.after(DirectBench.untouched(), new Deed.TakeOff()),
            new Intent.Lead(Spot.TERMINAL_TO_COMMON.placing(), Spot.ROD_TO_BURNER.function()));

    assertThat(HistoryView.of(state, null, DirectBench.ENGLISH, 100).lines().get(0).words())
        .isEqualTo("Meter, µA DC: red on sense terminal, black on board common");
  }
}
