package halfwave.circuit;

/** Disjoint sets over small integers: which nodes hang together. */
final class Forest {

  private final int[] parent;

  Forest(int size) {
    parent = new int[size];
    for (int k = 0; k < size; k++) {
      parent[k] = k;
    }
  }

  int root(int k) {
    int r = k;
    while (parent[r] != r) {
      r = parent[r];
    }
    parent[k] = r;
    return r;
  }

  /** Joins two sets; false where they were one already. The smaller root stays. */
  boolean join(int a, int b) {
    int ra = root(a);
    int rb = root(b);
    if (ra == rb) {
      return false;
    }
    parent[Math.max(ra, rb)] = Math.min(ra, rb);
    return true;
  }

  boolean together(int a, int b) {
    return root(a) == root(b);
  }
}
