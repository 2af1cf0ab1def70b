package halfwave.architecture.bad.left;

import halfwave.architecture.bad.right.Right;

/** One half of a cycle. */
public final class Left {
  Right right;
}
