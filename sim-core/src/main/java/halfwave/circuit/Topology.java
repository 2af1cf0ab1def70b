package halfwave.circuit;

import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;
import java.util.Arrays;
import java.util.List;

/**
 * How the points of a circuit hang together, before any number is solved.
 *
 * <p>Zero ohms merge points; so does what {@link SourceLoops} finds cut off. Capacitors join points
 * into components whose inner voltages are states; resistors join components into islands. An
 * island that reaches neither common nor source floats: its potential is free, and the currents of
 * the conductors that touch it must sum to zero. Where a whole cluster of islands floats, one of
 * them is pinned, since only differences have a meaning.
 */
final class Topology {

  static final int POINTS = Point.values().length;
  static final int KNOWN = -1;

  /** Representative of each point after merging what zero ohms join, and what is cut off. */
  final Forest merged = new Forest(POINTS);

  /** Component root (a merged point) of each merged point, or KNOWN (0 V or the source). */
  final int[] componentRoot = new int[POINTS];

  /** Per merged point, the state offsets from its component's root. */
  final double[][] offset;

  /** Per merged point, 1 where the component hangs on the source, else 0. */
  final double[] onSource = new double[POINTS];

  /** Number of states: branches of the capacitor forest. */
  final int states;

  /** Per merged point that is a component's root: index of its free potential, or −1. */
  final int[] freeIndex = new int[POINTS];

  /** Whether the potential of that component root is fixed (a free potential, or pinned at 0 V). */
  final boolean[] pinned = new boolean[POINTS];

  /** Number of free potentials. */
  final int free;

  /** Island of each component root; index 0 is the island of common and source. */
  private final Forest islands = new Forest(POINTS + 1);

  /** Conductors whose two ends are not merged; only these carry current. */
  final List<Conductor> ports;

  Topology(Circuit circuit) {
    List<Element> elements = circuit.elements();
    for (Element e : elements) {
      if (e instanceof Resistor r && r.resistanceOhms() == 0) {
        merged.join(r.from().ordinal(), r.to().ordinal());
      }
    }
    mergeWhatIsCutOff(elements);
    ports =
        elements.stream()
            .filter(e -> e instanceof Conductor && !shorted(e))
            .map(e -> (Conductor) e)
            .toList();
    List<Element> capacitors =
        elements.stream()
            .filter(e -> e instanceof Capacitor c && c.capacitanceFarads() > 0 && !shorted(c))
            .toList();
    offset = new double[POINTS][capacitors.size()];
    states = growComponents(capacitors);
    joinIslands(elements);
    free = findFreePotentials();
  }

  /**
   * What lies on no loop with the source carries no current, and a conductor, its law being zero
   * only there, has no voltage: all that hangs there is one point. So nothing is left to round.
   */
  private void mergeWhatIsCutOff(List<Element> elements) {
    int[] from = new int[elements.size()];
    int[] to = new int[elements.size()];
    int carriers = 0;
    for (Element e : elements) {
      if (conducts(e) && !shorted(e)) {
        from[carriers] = node(e.from());
        to[carriers++] = node(e.to());
      }
    }
    SourceLoops loops =
        new SourceLoops(POINTS, carriers, from, to, node(Point.COMMON), node(Point.EMF));
    for (int k = 0; k < carriers; k++) {
      if (!loops.contain(from[k]) || !loops.contain(to[k])) {
        merged.join(from[k], to[k]);
      }
    }
  }

  private static boolean conducts(Element e) {
    return e instanceof Conductor
        || (e instanceof Resistor r && r.resistanceOhms() < Double.POSITIVE_INFINITY)
        || (e instanceof Capacitor c && c.capacitanceFarads() > 0);
  }

  int node(Point point) {
    return merged.root(point.ordinal());
  }

  boolean shorted(Element e) {
    return node(e.from()) == node(e.to());
  }

  boolean sourceShorted() {
    return node(Point.COMMON) == node(Point.EMF);
  }

  private int growComponents(List<Element> capacitors) {
    Arrays.fill(componentRoot, Integer.MIN_VALUE);
    componentRoot[node(Point.COMMON)] = KNOWN;
    componentRoot[node(Point.EMF)] = KNOWN;
    onSource[node(Point.EMF)] = 1;
    int count = spread(capacitors, 0);
    for (int n = 0; n < POINTS; n++) {
      if (merged.root(n) == n && componentRoot[n] == Integer.MIN_VALUE) {
        componentRoot[n] = n;
        count = spread(capacitors, count);
      }
    }
    return count;
  }

  /** Walks along capacitors from what is placed already; each new point is one more state. */
  private int spread(List<Element> capacitors, int count) {
    boolean grew = true;
    while (grew) {
      grew = false;
      for (Element c : capacitors) {
        int a = node(c.from());
        int b = node(c.to());
        boolean hasA = componentRoot[a] != Integer.MIN_VALUE;
        boolean hasB = componentRoot[b] != Integer.MIN_VALUE;
        if (hasA != hasB) {
          int old = hasA ? a : b;
          int young = hasA ? b : a;
          componentRoot[young] = componentRoot[old];
          onSource[young] = onSource[old];
          System.arraycopy(offset[old], 0, offset[young], 0, offset[old].length);
          offset[young][count] = hasA ? -1 : 1;
          count++;
          grew = true;
        }
      }
    }
    return count;
  }

  private void joinIslands(List<Element> elements) {
    for (Element e : elements) {
      if (e instanceof Resistor r && r.resistanceOhms() < Double.POSITIVE_INFINITY) {
        islands.join(island(r.from()), island(r.to()));
      }
    }
  }

  /** Index 0 for what is known, else one more than the component's root. */
  private int island(Point point) {
    return componentRoot[node(point)] - KNOWN;
  }

  private int findFreePotentials() {
    Arrays.fill(freeIndex, -1);
    Forest clusters = new Forest(POINTS + 1);
    for (int r = 0; r < POINTS; r++) {
      clusters.join(r + 1, islands.root(r + 1));
    }
    for (Conductor p : ports) {
      clusters.join(islands.root(island(p.from())), islands.root(island(p.to())));
    }
    boolean[] clusterPinned = new boolean[POINTS + 1];
    clusterPinned[0] = true;
    boolean[] islandDone = new boolean[POINTS + 1];
    islandDone[0] = true;
    int count = 0;
    for (int n = 0; n < POINTS; n++) {
      if (merged.root(n) != n || componentRoot[n] != n) {
        continue;
      }
      int island = islands.root(n + 1);
      if (islandDone[island]) {
        continue;
      }
      islandDone[island] = true;
      pinned[n] = true;
      int cluster = clusters.root(island);
      if (clusterPinned[cluster]) {
        freeIndex[n] = count++;
      } else {
        clusterPinned[cluster] = true;
      }
    }
    return count;
  }
}
