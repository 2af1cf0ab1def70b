package halfwave.cli;

import halfwave.display.Sentences;
import halfwave.io.evidence.MatchWords;
import halfwave.matching.Match;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.List;
import java.util.ResourceBundle;

/** A match as two tables and what follows from it. */
final class MatchText {

  private static final int DEVIATION_DECIMALS = 1;

  private MatchText() {}

  static String of(Match match, Standard standard) {
    Sentences sentences = standard.sentences();
    ResourceBundle words = standard.spec().resourceBundle();
    TextTable values =
        new TextTable(
            List.of(
                words.getString("table.unknown"),
                words.getString("table.fitted"),
                words.getString("table.interval")),
            1);
    for (Match.Estimate e : match.estimates()) {
      values.add(
          List.of(
              sentences.name(e.unknown()),
              sentences.text(e.value()),
              sentences.text(Message.of(MessageKey.MATCH_INTERVAL, e.low(), e.high()))));
    }
    TextTable readings =
        new TextTable(
            List.of(
                words.getString("table.reading"),
                words.getString("table.read"),
                words.getString("table.fitted"),
                words.getString("table.deviations")),
            1);
    for (Match.Compared c : match.compared()) {
      readings.add(
          List.of(
              sentences.text(MatchWords.said(c.taken().sight())),
              sentences.text(c.taken().value()),
              sentences.text(c.fitted()),
              sentences.quantities().fixed(c.deviationCount(), DEVIATION_DECIMALS)));
    }
    List<String> conclusions = MatchWords.conclusions(match).stream().map(sentences::text).toList();
    return values + "\n" + readings + "\n" + Wrapping.paragraphs(conclusions);
  }
}
