/**
 * The window itself: it puts the panels of all themes together, and gives them menus, keys, files,
 * help and paper. Panels decide nothing and compute nothing.
 */
@NullMarked
package halfwave.gui.swing;

import org.jspecify.annotations.NullMarked;
