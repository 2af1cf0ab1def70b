/** Demonstrations as they are made: drafts, what is recorded for them, and claims. */
@NullMarked
package halfwave.gui.presentation.editor;

import org.jspecify.annotations.NullMarked;
