package halfwave.architecture.bad.right;

import halfwave.architecture.bad.left.Left;

/** The other half of a cycle. */
public final class Right {
  Left left;
}
