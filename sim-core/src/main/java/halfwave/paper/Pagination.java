package halfwave.paper;

import java.util.ArrayList;
import java.util.List;

/** Puts items on pages: what belongs together stays together where a page has room for it. */
final class Pagination {

  private final double room;
  private final List<List<Placed>> pages = new ArrayList<>();
  private double filled;

  /**
   * An item in its place.
   *
   * @param item the item
   * @param topPoints its upper edge, from the top of the room
   */
  static final class Placed {
    final Item item;
    final double top;

    private Placed(Item item, double top) {
      this.item = item;
      this.top = top;
    }
  }

  private Pagination(double room) {
    this.room = room;
    pages.add(new ArrayList<>());
  }

  /**
   * The pages.
   *
   * @param sections each begins a page of its own
   * @param room height of a page without its margins
   */
  static List<List<Placed>> of(List<List<Item>> sections, double room) {
    Pagination all = new Pagination(room);
    for (List<Item> section : sections) {
      if (!all.here().isEmpty()) {
        all.turn();
      }
      all.add(section);
    }
    return all.pages;
  }

  private List<Placed> here() {
    return pages.get(pages.size() - 1);
  }

  private void turn() {
    pages.add(new ArrayList<>());
    filled = 0;
  }

  private void add(List<Item> section) {
    int k = 0;
    while (k < section.size()) {
      int end = k + 1;
      while (end < section.size() && section.get(end - 1).keep) {
        end++;
      }
      List<Item> together = section.subList(k, end);
      double height = height(together);
      if (filled + height > room && !here().isEmpty()) {
        turn();
        height = height(together);
      }
      together.forEach(this::put);
      k = end;
    }
  }

  private double height(List<Item> together) {
    double height = 0;
    for (Item item : together) {
      height += item.height + (filled + height == 0 ? 0 : item.before);
    }
    return height;
  }

  private void put(Item item) {
    double before = here().isEmpty() ? 0 : item.before;
    // more than a page holds together is cut where it has to be
    if (filled + before + item.height > room && !here().isEmpty()) {
      turn();
      before = 0;
    }
    here().add(new Placed(item, filled + before));
    filled += before + item.height;
  }
}
