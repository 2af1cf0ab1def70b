package halfwave.benchmark;

import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * A deck for ngspice with its circuit several times over, each copy apart from the others but for
 * node 0. The first keeps its names, so the values that the deck prints are the first one's.
 *
 * <p>Equal copies take equal time steps; the time of one more copy is therefore the time of one
 * circuit, with neither process start nor the output's arithmetic in it.
 */
final class Copies {

  /**
   * A word of the deck that is a node: it stands behind the element's name, or inside {@code v()}.
   */
  private static final Pattern PROBE = Pattern.compile("v\\((\\w+),(\\w+)\\)");

  private Copies() {}

  /** The deck with {@code count} copies of its circuit. */
  static String of(String deck, int count) {
    StringBuilder text = new StringBuilder();
    StringBuilder circuit = new StringBuilder();
    boolean inside = true;
    String[] lines = deck.split("\n");
    text.append(lines[0]).append('\n');
    for (String line : Arrays.asList(lines).subList(1, lines.length)) {
      if (line.startsWith(".")) {
        if (inside) {
          addCopies(text, circuit.toString(), count);
          inside = false;
        }
        text.append(line).append('\n');
      } else if (inside) {
        circuit.append(line).append('\n');
      } else {
        text.append(line).append('\n');
      }
    }
    return text.toString();
  }

  private static void addCopies(StringBuilder text, String circuit, int count) {
    text.append(circuit);
    for (int k = 2; k <= count; k++) {
      String mark = "_copy" + k;
      for (String line : circuit.split("\n")) {
        text.append(line.startsWith("*") ? line : marked(line, mark)).append('\n');
      }
    }
  }

  private static String marked(String line, String mark) {
    String probes =
        PROBE
            .matcher(line)
            .replaceAll(m -> "v(" + node(m.group(1), mark) + "," + node(m.group(2), mark) + ")");
    if (line.startsWith("+")) {
      return probes;
    }
    String[] words = probes.split(" ", 4);
    return String.join(" ", words[0] + mark, node(words[1], mark), node(words[2], mark), words[3]);
  }

  private static String node(String name, String mark) {
    return name.equals("0") ? name : name + mark;
  }
}
