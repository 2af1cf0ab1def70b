/** What the cells of a notebook call besides the model itself: readings, tables, claims. */
@NullMarked
package halfwave.notebook;

import org.jspecify.annotations.NullMarked;
