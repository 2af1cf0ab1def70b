package halfwave.grading;

import halfwave.diagnosis.Outlook;
import halfwave.quiz.ServiceCall;

/** Where the judgement for a service call comes from; asked by many threads. */
@FunctionalInterface
public interface Outlooks {

  /** What causes look like on its bench, and how likely they are. */
  Outlook of(ServiceCall call);
}
