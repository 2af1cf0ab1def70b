package halfwave.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Trigger;
import halfwave.board.ShippedBoards;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Slices are the whole, and what cannot be done is found before it is tried. */
class PlaybackPropertyTest {

  private static final Bench BENCH = ShippedBenches.standard();

  private static final Moment COLD = Moment.cold(BENCH, ShippedBoards.all().get(0), 1);

  private static Act act(long millis, Parameter parameter, double si) {
    return new Act(millis, new Deed.Alter(Change.Turned.to(parameter, si)));
  }

  @Test
  void slicesPutTogetherAreTheWhole() {
    long until = 2 * Playback.SLICE_MILLIS + 12_345;
    List<Act> acts =
        Script.withStart(
            List.of(
                act(Playback.SLICE_MILLIS, Parameter.CONNECTOR, Double.POSITIVE_INFINITY),
                act(90_001, Parameter.ROD_UP, 0.002)));
    List<Segment> slices = new ArrayList<>();

    Moment end = Playback.play(COLD, until, acts, slices::add).orElseThrow();
    Segment whole = new Sequence().advance(COLD, until, acts);

    assertThat(slices).hasSize(3);
    assertThat(end).isEqualTo(whole.end());
    assertThat(slices.stream().flatMap(s -> s.events().stream()).toList())
        .isEqualTo(whole.events());
    assertThat(slices.stream().flatMap(s -> s.samples().stream()).toList())
        .isEqualTo(whole.samples());
  }

  @Test
  void theWatchEndsIt() {
    List<Segment> slices = new ArrayList<>();

    assertThat(
            Playback.play(
                COLD,
                10 * Playback.SLICE_MILLIS,
                List.of(),
                slice -> {
                  slices.add(slice);
                  return slices.size() < 2;
                }))
        .isEmpty();
    assertThat(slices).hasSize(2);
  }

  @Test
  void theFirstActThatCannotBeIsFound() {
    Act good = act(1000, Parameter.ROD_UP, 0.001);
    Act bad = act(3000, Parameter.ROD_ALONG, -0.03);

    assertThat(Playback.impossible(BENCH, List.of(good))).isEmpty();
    assertThat(Playback.impossible(BENCH, List.of(bad, good)))
        .hasValueSatisfying(found -> assertThat(found.act()).isSameAs(bad));
  }

  /** What lurks counts too, also where it is only an act later that makes it impossible. */
  @Test
  void whatLurksIsTried() {
    Act lurk =
        new Act(
            1000,
            new Deed.Lurk(
                new Intermittent(Trigger.HEAT, Change.Turned.to(Parameter.ROD_ALONG, -0.03))));

    assertThat(Playback.impossible(BENCH, List.of(lurk)))
        .hasValueSatisfying(found -> assertThat(found.act()).isSameAs(lurk));
  }

  @Test
  void aStartIsAddedUnlessThereIsOne() {
    Act off = new Act(60_000, new Deed.Call(false));
    Act on = new Act(0, new Deed.Supply(true));
    Act call = new Act(90_000, new Deed.Call(true));

    assertThat(Script.withStart(List.of(off))).hasSize(3).endsWith(off);
    assertThat(Script.withStart(List.of(off, call))).hasSize(4).endsWith(off, call);
    assertThat(Script.withStart(List.of(on))).hasSize(2).endsWith(on);
    assertThat(Script.withStart(List.of(on, call))).containsExactly(on, call);
  }
}
