package halfwave.architecture.bad.halfwave.gui.presentation.quiz;

/** A quiz, which comes after the bench. */
public final class LateTheme {}
