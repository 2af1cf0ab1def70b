package halfwave.architecture.bad.halfwave.io.quiz;

/** What no earlier theme may know. */
public final class LateTheme {}
