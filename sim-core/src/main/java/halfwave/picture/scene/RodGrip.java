package halfwave.picture.scene;

/** What a drag of the rod does. */
public enum RodGrip {
  /** Moves it as a whole. */
  BODY,
  /** Turns or tilts it about its insulator. */
  TIP,
  /** Bends it in the middle. */
  BEND
}
