package halfwave.grading;

import halfwave.diagnosis.Advice;
import halfwave.diagnosis.Adviser;
import halfwave.diagnosis.Belief;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Outlook;
import halfwave.quiz.ServiceCall;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an expert would believe and advise at each point of a service call. Remembers its latest
 * answers: learners begin alike. Safe for many threads.
 */
public final class Assessor {

  /** A belief takes about a hundred kilobytes. */
  private static final int REMEMBERED = 100;

  private final ServiceCall call;
  private final Outlook outlook;
  private final Adviser adviser;
  private final Map<List<Entry>, Thought> thoughts =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Entry>, Thought> eldest) {
          return size() > REMEMBERED;
        }
      };

  /**
   * What an expert thinks.
   *
   * @param belief what is wrong, with its probability
   * @param advice what to do; checks that are closed are left out
   */
  public record Thought(Belief belief, Advice advice) {

    /** What a check would bring, or nothing if it is done already. */
    Optional<CheckAdvice> check(Check check) {
      return advice.checks().stream().filter(c -> c.check().equals(check)).findFirst();
    }
  }

  /** Prepares it. */
  public Assessor(ServiceCall call, Outlook outlook) {
    this.call = call;
    this.outlook = outlook;
    adviser = new Adviser(outlook, call.ignition());
  }

  /** The thought after all of these lines. */
  public Thought after(List<Entry> entries) {
    List<Entry> key = List.copyOf(entries);
    synchronized (thoughts) {
      Thought known = thoughts.get(key);
      if (known != null) {
        return known;
      }
    }
    Belief belief =
        key.isEmpty()
            ? outlook.start()
            : after(key.subList(0, key.size() - 1)).belief().after(key.get(key.size() - 1));
    Thought thought = new Thought(belief, open(adviser.advice(belief)));
    synchronized (thoughts) {
      thoughts.put(key, thought);
    }
    return thought;
  }

  /** What is believed when all of this is found on one furnace. */
  public Belief knowing(Map<Check, Outcome> found) {
    List<Entry> entries = new ArrayList<>();
    found.forEach((check, outcome) -> entries.add(new Entry.Observed(check, outcome)));
    return outlook.start().after(entries);
  }

  private Advice open(Advice advice) {
    return new Advice(
        advice.checks().stream().filter(c -> call.open(c.check())).toList(),
        advice.repairs(),
        advice.repairSeconds(),
        advice.doubtBits(),
        advice.healthyProbability());
  }
}
