package halfwave.grading;

/**
 * What kind of move it was when it was chosen (after the classes of Steinberg and Gitomer,
 * Instructional Science 24 (1996) 223: space splitting, serial elimination, remove and replace,
 * redundant, irrelevant).
 */
public enum MoveClass {
  /** Describes what the furnace does. */
  DESCRIBES,
  /** Splits what is possible. */
  SPLITS,
  /** Rules a little out. */
  ELIMINATES,
  /** Tells what is known already. */
  REDUNDANT,
  /** Can tell nothing about what is possible. */
  IRRELEVANT,
  /** Repairs what is likely to be wrong. */
  PUTS_RIGHT,
  /** Replaces on suspicion, though a check would pay. */
  ON_SUSPICION,
  /** Makes it impossible to see what was wrong, before it was seen. */
  DESTROYS_EVIDENCE,
  /** Proves a repair. */
  PROVES,
  /** Hurts people. */
  DANGEROUS,
  /** Makes the appliance safe, or ready. */
  PREPARES,
  /** Says or asks something. */
  SAYS
}
