package halfwave.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything that a board can do, breadth first, from having lain without power: at each instant of
 * a grid every combination of inputs, then either one step of the grid or another combination at
 * the same instant. What is explored are pairs of board and monitor, so that every rule is judged
 * on every way to a state.
 */
final class BoardExploration {

  private record Node(BoardState board, SafetyMonitor monitor) {}

  /** A broken board may count for ever. */
  private static final int MOST_NODES = 3_000_000;

  private final BoardUnderTest board;
  private final BoardSettings settings;
  private final long stepMillis;
  private final List<BoardInputs> inputs;

  private final Map<Node, Integer> numbers = new HashMap<>();
  private final List<Node> nodes = new ArrayList<>();
  private final List<int[]> next = new ArrayList<>();
  private int[] parents = new int[1024];
  private int[] byInputs = new int[1024];
  private final Map<SafetyRule, String> broken = new EnumMap<>(SafetyRule.class);
  private long steps;

  private BoardExploration(BoardUnderTest board, BoardSettings settings, long stepMillis) {
    this.board = board;
    this.settings = settings;
    this.stepMillis = stepMillis;
    this.inputs = inputs(settings);
    number(new Node(BoardState.unpowered(settings), SafetyMonitor.unpowered(settings)), 0, 0);
  }

  /** All of it. */
  static BoardExploration of(BoardUnderTest board, BoardSettings settings, long stepMillis) {
    BoardExploration e = new BoardExploration(board, settings, stepMillis);
    while (e.expanded() < e.pairs()) {
      e.expand();
    }
    e.deadEnds();
    return e;
  }

  /** As far as the first breach of that rule, or all of it. */
  static BoardExploration until(
      SafetyRule rule, BoardUnderTest board, BoardSettings settings, long stepMillis) {
    BoardExploration e = new BoardExploration(board, settings, stepMillis);
    while (e.expanded() < e.pairs() && !e.broken.containsKey(rule)) {
      e.expand();
    }
    if (e.expanded() == e.pairs()) {
      e.deadEnds();
    }
    return e;
  }

  /** Rules that were broken, each with the shortest way to it. */
  Map<SafetyRule, String> broken() {
    return broken;
  }

  /** States of the board. */
  int boardStates() {
    Set<BoardState> states = new HashSet<>();
    nodes.forEach(n -> states.add(n.board()));
    return states.size();
  }

  /** States of the board with what the monitor has seen on the way. */
  int pairs() {
    return nodes.size();
  }

  /** Instants settled and judged. */
  long steps() {
    return steps;
  }

  Set<Stage> stages() {
    Set<Stage> stages = new HashSet<>();
    nodes.forEach(n -> stages.add(n.board().stage()));
    return stages;
  }

  private static List<BoardInputs> inputs(BoardSettings settings) {
    List<BoardInputs> all = new ArrayList<>();
    for (int bits = 0; bits < 64; bits++) {
      boolean lineRight = (bits & 32) == 0;
      // a board that does not check the line does not look at it
      if (lineRight || settings.sensing().checksLine()) {
        for (FlameSignal signal : FlameSignal.values()) {
          all.add(
              new BoardInputs(
                  (bits & 1) == 0,
                  (bits & 2) == 0,
                  (bits & 4) == 0,
                  (bits & 8) == 0,
                  lineRight,
                  (bits & 16) == 0,
                  signal));
        }
      }
    }
    return all;
  }

  private int expanded() {
    return next.size();
  }

  private void expand() {
    int from = next.size();
    int[] to = new int[2 * inputs.size()];
    int count = 0;
    for (int i = 0; i < inputs.size(); i++) {
      count = step(from, i, to, count);
    }
    next.add(Arrays.stream(to, 0, count).distinct().toArray());
    if (nodes.size() > MOST_NODES) {
      throw new IllegalStateException("too many states of " + settings);
    }
  }

  private int step(int from, int input, int[] to, int count) {
    Node node = nodes.get(from);
    BoardInputs in = inputs.get(input);
    steps++;
    BoardStep step;
    try {
      step = board.settle(settings, node.board(), in);
    } catch (IllegalStateException e) {
      broke(SafetyRule.BOARD_RESTS, from, input);
      return count;
    }
    BoardState state = step.state();
    BoardOutputs out = board.outputs(settings, state);
    SafetyMonitor monitor =
        node.monitor().settled(settings, in, step, out, rule -> broke(rule, from, input));
    if (!board.settle(settings, state, in).equals(new BoardStep(state, List.of()))) {
      broke(SafetyRule.BOARD_RESTS, from, input);
    }
    long due = board.dueMillis(settings, state, in);
    BoardState later = board.after(settings, state, in, stepMillis);
    if (due < stepMillis || (due > stepMillis && moves(later, in, out))) {
      broke(SafetyRule.DUE_IS_EXACT, from, input);
    }
    // time goes on, or something else changes at the same instant
    to[count] = number(new Node(told(later), monitor.later(settings, in, stepMillis)), from, input);
    to[count + 1] = number(new Node(told(state), monitor), from, input);
    return count + 2;
  }

  private boolean moves(BoardState later, BoardInputs in, BoardOutputs out) {
    return !board.settle(settings, later, in).transitions().isEmpty()
        || !board.outputs(settings, later).equals(out);
  }

  /** A board that allows any number of losses tells none from some, but not two from three. */
  private BoardState told(BoardState state) {
    return settings.counting().mostLosses() > 0
        ? state
        : state.withCounts(state.failedTrials(), Math.min(1, state.losses()));
  }

  private int number(Node node, int parent, int input) {
    Integer known = numbers.putIfAbsent(node, nodes.size());
    if (known != null) {
      return known;
    }
    int n = nodes.size();
    nodes.add(node);
    if (n == parents.length) {
      parents = Arrays.copyOf(parents, 2 * n);
      byInputs = Arrays.copyOf(byInputs, 2 * n);
    }
    parents[n] = parent;
    byInputs[n] = input;
    return n;
  }

  private void broke(SafetyRule rule, int from, int input) {
    broken.computeIfAbsent(rule, r -> way(from, input));
  }

  private String way(int from, int input) {
    List<String> way = new ArrayList<>();
    way.add(nodes.get(from) + " then " + inputs.get(input));
    for (int k = from; k > 0; k = parents[k]) {
      way.add(0, nodes.get(parents[k]).board().stage() + " " + brief(inputs.get(byInputs[k])));
    }
    return String.join("\n  ", way);
  }

  private static String brief(BoardInputs in) {
    return (in.power() ? "power " : "")
        + (in.call() ? "call " : "")
        + (in.pressureClosed() ? "pressure " : "")
        + (in.limitClosed() ? "" : "limit-open ")
        + (in.selfTestPassed() ? "" : "fault ")
        + (in.lineRight() ? "" : "reversed ")
        + in.signal();
  }

  /** From everywhere, something leads to a running burner, and something to standby. */
  private void deadEnds() {
    for (Stage goal : List.of(Stage.RUN, Stage.STANDBY)) {
      int lost = leadsTo(goal).nextClearBit(0);
      if (lost < nodes.size()) {
        broken.putIfAbsent(
            SafetyRule.NO_DEAD_END,
            "no way to " + goal + ": " + way(parents[lost], byInputs[lost]));
      }
    }
  }

  private BitSet leadsTo(Stage goal) {
    int[][] before = before();
    BitSet leads = new BitSet(nodes.size());
    int[] queue = new int[nodes.size()];
    int end = 0;
    for (int n = 0; n < nodes.size(); n++) {
      if (nodes.get(n).board().stage() == goal) {
        leads.set(n);
        queue[end++] = n;
      }
    }
    for (int k = 0; k < end; k++) {
      for (int b : before[queue[k]]) {
        if (!leads.get(b)) {
          leads.set(b);
          queue[end++] = b;
        }
      }
    }
    return leads;
  }

  private int[][] before() {
    int[] counts = new int[nodes.size()];
    next.forEach(to -> Arrays.stream(to).forEach(n -> counts[n]++));
    int[][] before = new int[nodes.size()][];
    for (int n = 0; n < before.length; n++) {
      before[n] = new int[counts[n]];
    }
    for (int from = 0; from < next.size(); from++) {
      for (int to : next.get(from)) {
        before[to][--counts[to]] = from;
      }
    }
    return before;
  }
}
