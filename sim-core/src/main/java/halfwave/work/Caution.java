package halfwave.work;

import halfwave.board.Ignition;

/** What a person has to be told before work, in a sentence. */
public enum Caution {
  /** Before opening anything. */
  OFF_BEFORE_OPENING,
  /** Near live parts. */
  LIVE_PARTS,
  /** Near ignition voltage. */
  SPARK_VOLTAGE,
  /** Near wheels. */
  MOVING_PARTS,
  /** Near a flame. */
  FLAME,
  /** While it burns. */
  CARBON_MONOXIDE,
  /** After a gas joint was opened. */
  LEAK_TEST,
  /** After it burnt. */
  LET_COOL,
  /** While it burns or glows. */
  STAYS_HOT,
  /** Behind the door that cuts the power. */
  DOOR_SWITCH,
  /** Sheet metal. */
  GLOVES,
  /** Switches that guard. */
  NEVER_BYPASS,
  /** Before anything is cleaned. */
  READ_FIRST,
  /** Scratches of a cleaned rod. */
  SCRATCHES,
  /** Grit of abrasive paper. */
  GRIT,
  /** Loose strands and bristles. */
  STRANDS,
  /** Ceramic of the rod. */
  CERAMIC,
  /** Skin on the rod. */
  ROD_SKIN,
  /** The igniter's element. */
  IGNITER_ELEMENT,
  /** The electrode of a spark. */
  SPARK_ELECTRODE,
  /** A connector of flat springs. */
  CONNECTOR_SPRING,
  /** Bending as a makeshift. */
  MAKESHIFT,
  /** A meter's tips. */
  PROBE_TIPS,
  /** Leads near the flame. */
  LEAD_ROUTE,
  /** Burners on their orifices. */
  BURNER_SEAT,
  /** A heat exchanger that leaks. */
  RED_TAG,
  /** What a new board costs in vain. */
  BOARD_LAST,
  /** Where damp comes from. */
  DAMP_RETURNS,
  /** Adjusting gas. */
  GAS_SETTING,
  /** A gauge on a gas tap. */
  GAUGE_FIRST,
  /** A gas valve that passes gas. */
  GAS_ESCAPES,
  /** A gas cock that somebody shut. */
  WHY_SHUT,
  /** An insulation tester's volts. */
  TEST_VOLTAGE,
  /** Swapped wires. */
  SWITCH_MAY_NOT_CUT;

  /** The same at an appliance that lights its gas so: an electrode is no brittle element. */
  Caution at(Ignition ignition) {
    return this == IGNITER_ELEMENT && !ignition.hotSurface() ? SPARK_ELECTRODE : this;
  }
}
