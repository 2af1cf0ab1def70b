/** The program that evaluates the cells of a notebook: Java, with the model on its class path. */
@NullMarked
package halfwave.notebook.kernel;

import org.jspecify.annotations.NullMarked;
