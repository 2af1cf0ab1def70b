package halfwave.work;

/** What is needed beside the hands. */
public enum Tool {
  /** Nothing. */
  HANDS,
  /** A lamp and a mirror. */
  LAMP,
  /** A screwdriver. */
  SCREWDRIVER,
  /** A nut driver. */
  NUT_DRIVER,
  /** Two wrenches, one to hold against. */
  WRENCHES,
  /** A hex key. */
  HEX_KEY,
  /** Pliers with padded jaws. */
  PADDED_PLIERS,
  /** Cutter, stripper and crimping tool. */
  CRIMPING_TOOL,
  /** A light abrasive pad. */
  PAD,
  /** Fine steel wool. */
  STEEL_WOOL,
  /** A brass brush. */
  BRASS_BRUSH,
  /** Abrasive paper. */
  ABRASIVE_PAPER,
  /** A soft brush and a vacuum cleaner. */
  BRUSH_AND_VACUUM,
  /** A ruler. */
  RULER,
  /** Volts and ohms. */
  MULTIMETER,
  /** Microamps in series. */
  MICROAMMETER,
  /** Megohms at test voltage. */
  INSULATION_TESTER,
  /** Gas pressure. */
  MANOMETER,
  /** Flue gas. */
  COMBUSTION_ANALYSER
}
