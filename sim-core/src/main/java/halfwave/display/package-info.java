/** SI to display unit and text; message keys to sentences in each language. */
@NullMarked
package halfwave.display;

import org.jspecify.annotations.NullMarked;
