package halfwave.io.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.matching.Match;
import halfwave.matching.Match.Estimate;
import halfwave.matching.Unknown;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.message.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;

class MatchWordsTest {

  @Test
  void aValueOutsideItsOwnIntervalIsExplained() {
    assertThat(keys(8e5)).containsExactly(MessageKey.MATCH_TOGETHER, MessageKey.MATCH_INTERVALS);
    assertThat(keys(5e5)).containsExactly(MessageKey.MATCH_INTERVALS);
  }

  private static List<MessageKey> keys(double ohms) {
    Unknown unknown = Unknown.SOURCE_OHMS;
    Estimate estimate =
        new Estimate(
            unknown,
            new Quantity(ohms, unknown.dimension()),
            new Quantity(2e5, unknown.dimension()),
            new Quantity(7e5, unknown.dimension()));
    Match match = new Match(ShippedBenches.standard(), List.of(estimate), List.of(), 1, List.of());
    return MatchWords.conclusions(match).stream().map(Message::key).toList();
  }
}
