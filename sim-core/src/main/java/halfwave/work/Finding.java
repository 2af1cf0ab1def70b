package halfwave.work;

/** What a look can find. Each {@link Look} has a few of them. */
public enum Finding {
  /** No flame. */
  FLAME_OUT,
  /** Blue, steady, at the ports. */
  FLAME_HEALTHY,
  /** Soft, rising or yellow. */
  FLAME_LAZY,
  /** Off the ports, unsteady. */
  FLAME_LIFTING,
  /** Short, hard, loud: much air. */
  FLAME_HARD,
  /** Blue, and smaller than usual. */
  FLAME_SMALL,
  /** Blue, and larger than usual. */
  FLAME_LARGE,
  /** Only on some burners or ports. */
  FLAME_PARTIAL,
  /** Bare metal. */
  ROD_CLEAN,
  /** A glassy film. */
  ROD_GLASSY,
  /** A thick, cracked crust. */
  ROD_FOULED,
  /** Bent out of the flame. */
  ROD_BENT,
  /** Too far off, or pulled back. */
  ROD_FAR,
  /** It touches metal. */
  ROD_TOUCHES,
  /** It has come off. */
  ROD_OFF,
  /** Sound ceramic. */
  CERAMIC_SOUND,
  /** A crack or a carbon track. */
  CERAMIC_CRACKED,
  /** A deposit across it. */
  CERAMIC_DEPOSIT,
  /** A connector that sits. */
  CONNECTOR_FIRM,
  /** A connector that gives. */
  CONNECTOR_LOOSE,
  /** A connector that is off. */
  CONNECTOR_OFF,
  /** End to end as built. */
  LEAD_THROUGH,
  /** More than it should be. */
  LEAD_HIGH,
  /** No way through. */
  LEAD_OPEN,
  /** Below two ohms. */
  BOND_GOOD,
  /** Above two ohms. */
  BOND_HIGH,
  /** No way back. */
  BOND_OPEN,
  /** 50 MΩ and more. */
  INSULATION_GOOD,
  /** 20 to 50 MΩ. */
  INSULATION_WORN,
  /** 1 to 20 MΩ. */
  INSULATION_POOR,
  /** Below 1 MΩ. */
  INSULATION_FAILED,
  /** The gap as fitted. */
  GAP_RIGHT,
  /** Less than that. */
  GAP_SMALL,
  /** More than that. */
  GAP_LARGE,
  /** No gap. */
  GAP_NONE,
  /** A clean burner face. */
  BURNER_CLEAN,
  /** Rust and scale. */
  BURNER_SCALED,
  /** Blocked ports. */
  BURNER_BLOCKED,
  /** Nothing lights. */
  TRAVEL_NOTHING,
  /** From end to end at once. */
  TRAVEL_QUICK,
  /** It hesitates. */
  TRAVEL_SLOW,
  /** It stops on the way. */
  TRAVEL_STOPS,
  /** Line on line, neutral on neutral. */
  POLARITY_RIGHT,
  /** The other way round. */
  POLARITY_SWAPPED,
  /** No voltage. */
  POLARITY_DEAD,
  /** No pressure. */
  PRESSURE_NONE,
  /** Too little. */
  PRESSURE_LOW,
  /** As set up. */
  PRESSURE_RIGHT,
  /** Too much. */
  PRESSURE_HIGH,
  /** Voltage at the valve. */
  VALVE_POWERED,
  /** A trial, and no voltage. */
  VALVE_UNPOWERED,
  /** No trial. */
  VALVE_NOT_CALLED,
  /** It glows or sparks. */
  IGNITER_WORKS,
  /** Sound and dark. */
  IGNITER_DARK,
  /** Cracked or broken. */
  IGNITER_CRACKED,
  /** The pressure switch is open. */
  PRESSURE_SWITCH_OPEN,
  /** The pressure switch is closed. */
  PRESSURE_SWITCH_CLOSED,
  /** The limit is open. */
  LIMIT_OPEN,
  /** The limit is closed. */
  LIMIT_CLOSED,
  /** The inducer turns. */
  INDUCER_TURNS,
  /** The inducer stands still. */
  INDUCER_STILL,
  /** The circulating blower moves air. */
  BLOWER_TURNS,
  /** It moves none. */
  BLOWER_STILL,
  /** Gets worse over weeks. */
  SINCE_WEEKS,
  /** From one day to the next. */
  SINCE_ONE_DAY,
  /** Since someone worked on it. */
  SINCE_WORK,
  /** Comes and goes. */
  COMES_AND_GOES,
  /** Nothing was noticed. */
  NOTHING_NOTICED,
  /** It heats. */
  SAYS_HEATS,
  /** It is dead. */
  SAYS_DEAD,
  /** It lights and goes out. */
  SAYS_GOES_OUT,
  /** It tries and never stays lit. */
  SAYS_NEVER_STAYS,
  /** Fans run on without heat. */
  SAYS_FANS_RUN,
  /** It does not even start. */
  SAYS_NO_START,
  /** No call for heat now. */
  SAYS_WAITS,
  /** Nothing burns that could be measured. */
  COMBUSTION_NONE,
  /** As usual. */
  COMBUSTION_FINE,
  /** Worse than usual. */
  COMBUSTION_WORSE,
  /** So bad that the appliance has to stop. */
  COMBUSTION_STOP
}
