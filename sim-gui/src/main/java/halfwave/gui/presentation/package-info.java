/**
 * What the window shows and what a hand may do with it, without a display: the workbench with its
 * one present, and a view of it for each panel.
 */
@NullMarked
package halfwave.gui.presentation;

import org.jspecify.annotations.NullMarked;
