package halfwave.work;

/** A panel in the way. Its minutes are for opening and closing it. */
public enum Cover {
  /** Door of the burner compartment; it hangs on hooks. */
  BURNER_DOOR(1, 0, Tool.HANDS),
  /** Door of the blower compartment, with the door switch behind it. */
  BLOWER_DOOR(1, 2, Tool.SCREWDRIVER),
  /** Lid of the burner box. */
  BURNER_BOX(3, 4, Tool.NUT_DRIVER),
  /** Lid over the board. */
  CONTROL_BOX(2, 2, Tool.SCREWDRIVER),
  /** Lid over the line connections. */
  JUNCTION_BOX(1, 1, Tool.SCREWDRIVER),
  /** The manifold: a union and four screws. */
  MANIFOLD(15, 5, Tool.WRENCHES);

  private final int minutes;
  private final int fasteners;
  private final Tool tool;

  Cover(int minutes, int fasteners, Tool tool) {
    this.minutes = minutes;
    this.fasteners = fasteners;
    this.tool = tool;
  }

  /** Minutes to open and close it. */
  public int minutes() {
    return minutes;
  }

  /** Screws and unions that hold it. */
  public int fasteners() {
    return fasteners;
  }

  /** What undoes them. */
  public Tool tool() {
    return tool;
  }
}
