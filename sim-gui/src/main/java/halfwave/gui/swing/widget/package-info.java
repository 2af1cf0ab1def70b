/**
 * What every panel is made of: colours and type, rows and columns, fields, and questions about
 * files.
 */
@NullMarked
package halfwave.gui.swing.widget;

import org.jspecify.annotations.NullMarked;
