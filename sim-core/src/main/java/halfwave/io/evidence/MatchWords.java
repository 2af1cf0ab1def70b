package halfwave.io.evidence;

import halfwave.display.Sentences;
import halfwave.io.bench.LumpedCircuitFile;
import halfwave.matching.Match;
import halfwave.matching.Match.Ambiguity;
import halfwave.matching.Match.Compared;
import halfwave.matching.Match.Proposal;
import halfwave.matching.Matched;
import halfwave.matching.Setting;
import halfwave.matching.Sight;
import halfwave.matching.Unknown;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a match says, in messages. */
public final class MatchWords {

  private MatchWords() {}

  /** A reading and what it is taken under. */
  public static Message said(Sight sight) {
    Setting s = sight.setting();
    Message said = Message.of(MessageKey.MATCH_SIGHT, Argument.name(sight.kind()));
    if (s.cleaned()) {
      said = Message.of(MessageKey.MATCH_CLEANED, Argument.nested(said));
    }
    said = moved(said, MessageKey.MATCH_ACROSS, s.acrossMeters());
    said = moved(said, MessageKey.MATCH_UP, s.upMeters());
    return moved(said, MessageKey.MATCH_ALONG, s.alongMeters());
  }

  private static Message moved(Message said, MessageKey key, double meters) {
    return meters == 0
        ? said
        : Message.of(key, Argument.nested(said), Argument.quantity(meters, Dimension.LENGTH));
  }

  /** Whether it fits, what is open, what would help, and what the intervals are worth. */
  public static List<Message> conclusions(Match match) {
    List<Message> all = new ArrayList<>();
    if (!match.plausible()) {
      Compared worst =
          match.compared().stream()
              .max(Comparator.comparingDouble(c -> Math.abs(c.deviationCount())))
              .orElseThrow();
      all.add(
          Message.of(
              MessageKey.MATCH_IMPLAUSIBLE,
              Argument.nested(said(worst.taken().sight())),
              worst.taken().value(),
              worst.fitted()));
    }
    for (Ambiguity ambiguity : match.ambiguities()) {
      all.add(said(ambiguity));
      all.add(further(ambiguity.further()));
    }
    match.estimates().stream()
        .filter(e -> !e.holds(e.value().si()))
        .forEach(e -> all.add(Message.of(MessageKey.MATCH_TOGETHER, Argument.name(e.unknown()))));
    all.add(Message.of(MessageKey.MATCH_INTERVALS));
    return all;
  }

  private static Message said(Ambiguity ambiguity) {
    List<Unknown> unknowns = ambiguity.unknowns();
    Argument listed = Argument.name(unknowns.get(0));
    for (Unknown unknown : unknowns.subList(1, unknowns.size())) {
      listed = Argument.nested(Message.of(MessageKey.MATCH_AND, listed, Argument.name(unknown)));
    }
    return Message.of(
        unknowns.size() == 1 ? MessageKey.MATCH_UNSEEN : MessageKey.MATCH_AMBIGUOUS, listed);
  }

  private static Message further(@Nullable Proposal proposal) {
    return proposal == null
        ? Message.of(MessageKey.MATCH_NOTHING_FURTHER)
        : Message.of(
            MessageKey.MATCH_FURTHER,
            Argument.nested(said(proposal.sight())),
            proposal.expected(),
            Argument.quantity(proposal.remainingRatio(), Dimension.RATIO));
  }

  /** Why there is no match. */
  public static Message failure(Matched failed) {
    if (failed instanceof Matched.Impossible impossible) {
      return Message.of(
          MessageKey.MATCH_IMPOSSIBLE,
          Argument.nested(said(impossible.sight())),
          Argument.nested(Sentences.allowed(impossible.reason())));
    } else if (failed instanceof Matched.Unsolved unsolved) {
      return Message.of(
          MessageKey.MATCH_UNSOLVED,
          Argument.nested(said(unsolved.sight())),
          Argument.nested(LumpedCircuitFile.said(unsolved.reason())));
    } else if (failed instanceof Matched.Unsettled unsettled) {
      return Message.of(MessageKey.MATCH_UNSETTLED, Argument.count(unsettled.searchCount()));
    }
    throw new IllegalArgumentException("failed = " + failed + ": no match");
  }
}
