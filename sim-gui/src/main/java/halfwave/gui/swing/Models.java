package halfwave.gui.swing;

import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.evidence.EvidenceModel;
import halfwave.gui.presentation.evidence.WhyModel;
import halfwave.gui.presentation.lesson.LessonModel;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * What the panels show; they come and go, these stay.
 *
 * @param workbench the bench
 * @param lesson the demonstration
 * @param why the explanation of what is read
 * @param evidence what was found, and what follows from it
 * @param background runs charts and explanations, one after the other
 * @param failed is told of an error in the program itself
 */
record Models(
    Workbench workbench,
    LessonModel lesson,
    WhyModel why,
    EvidenceModel evidence,
    Executor background,
    Consumer<Throwable> failed) {}
