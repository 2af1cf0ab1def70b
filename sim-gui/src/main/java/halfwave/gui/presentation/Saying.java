package halfwave.gui.presentation;

/** Something to say, in any language. */
@FunctionalInterface
public interface Saying {

  /** Nothing. */
  Saying NOTHING = words -> "";

  /** The same in one language. */
  String in(Wording words);
}
