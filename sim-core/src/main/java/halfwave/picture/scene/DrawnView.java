package halfwave.picture.scene;

/** From where the flame zone is seen; in both the burner stands on the left. */
public enum DrawnView {
  /** From above, cut at the height of the rod's tip: z to the right, x downwards. */
  ABOVE,
  /** From the side of the rod's tip, cut through the burner's axis: z to the right, y upwards. */
  SIDE
}
