package halfwave.picture.flame;

import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Remembers the last few pictures of flames, by the values they were made from: a drawing that is
 * painted anew while only the rod moves needs no new one. One instance belongs to one thread; a
 * fresh one gives the same pictures.
 */
public final class FlameMemory {

  private static final int REMEMBERED = 6;

  private final Map<FlameImage.Key, BufferedImage> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<FlameImage.Key, BufferedImage> eldest) {
          return size() > REMEMBERED;
        }
      };

  private int made;

  /** How many pictures were made so far. */
  public int madeCount() {
    return made;
  }

  /** The picture, as it is remembered or made. */
  public BufferedImage of(FlameImage.Key key) {
    BufferedImage there = known.get(key);
    if (there == null) {
      there = FlameImage.of(key);
      made++;
      known.put(key, there);
    }
    return there;
  }
}
