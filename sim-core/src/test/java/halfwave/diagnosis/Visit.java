package halfwave.diagnosis;

import halfwave.diagnosis.Entry.Observed;
import halfwave.diagnosis.Entry.Repaired;
import halfwave.diagnosis.Entry.Result;
import halfwave.work.Repair;

/** One technician at one furnace: what was spent, what is believed. */
final class Visit {

  private final Situation situation;
  private Belief belief;
  private int minutes;
  private int parts;
  private int needless;
  private boolean ended;

  /** Everybody watches a call first. */
  Visit(Situation situation, Outlook outlook) {
    this.situation = situation;
    belief = outlook.start();
    check(new Check.Call());
    check(new Check.Light());
  }

  void check(Check check) {
    minutes += check.minutes();
    belief = belief.after(new Observed(check, situation.find(check)));
  }

  void repair(Repair repair) {
    Cause before = situation.left();
    minutes += repair.minutes() + Check.CALL_MINUTES;
    parts += repair.costUnits();
    Result result = situation.repair(repair);
    needless += situation.left().equals(before) ? 1 : 0;
    belief = belief.after(new Repaired(repair, result));
    ended = result == Result.CURED;
  }

  void end() {
    ended = true;
  }

  Belief belief() {
    return belief;
  }

  boolean ended() {
    return ended || minutes > 900;
  }

  /** Whether the furnace is really whole. */
  boolean whole() {
    return situation.left().healthy();
  }

  int minutes() {
    return minutes;
  }

  int parts() {
    return parts;
  }

  int needless() {
    return needless;
  }
}
