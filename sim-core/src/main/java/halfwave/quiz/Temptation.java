package halfwave.quiz;

import halfwave.work.Caution;
import java.util.Locale;

/** What nobody may do at a furnace, and what some do all the same. */
public enum Temptation {
  /** A jumper from the sense terminal to the chassis. */
  JUMPER_AT_THE_ROD(Caution.NEVER_BYPASS),
  /** A jumper across a switch that guards. */
  JUMPER_ACROSS_A_SWITCH(Caution.NEVER_BYPASS),
  /** Gas lit by hand while the igniter is out of order. */
  LIGHTING_BY_HAND(Caution.FLAME),
  /** A meter on the electrode of a spark while it sparks. */
  METER_ON_THE_SPARK(Caution.SPARK_ELECTRODE),
  /** Reset again and again, with no purge between. */
  RESET_WITHOUT_PURGE(Caution.FLAME);

  private final Caution caution;

  Temptation(Caution caution) {
    this.caution = caution;
  }

  /** What has to be said about it. */
  public Caution caution() {
    return caution;
  }

  /** Name in commands and files. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
