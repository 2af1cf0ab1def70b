package halfwave.paper;

/** Something of a height on a page that is never cut in two. */
final class Item {

  /** Room above it, which falls away at the top of a page. */
  final double before;

  final double height;

  /** Whether the next item has to stand on the same page. */
  final boolean keep;

  final Painter painter;

  Item(double before, double height, boolean keep, Painter painter) {
    this.before = before;
    this.height = height;
    this.keep = keep;
    this.painter = painter;
  }

  Item keeping() {
    return new Item(before, height, true, painter);
  }

  /** Paints it. */
  @FunctionalInterface
  interface Painter {

    /**
     * Paints it on its page.
     *
     * @param pen writes on that page
     * @param top its upper edge
     */
    void paint(Pen pen, double top);
  }
}
