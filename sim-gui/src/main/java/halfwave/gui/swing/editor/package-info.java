/** The editor in which demonstrations are made. */
@NullMarked
package halfwave.gui.swing.editor;

import org.jspecify.annotations.NullMarked;
