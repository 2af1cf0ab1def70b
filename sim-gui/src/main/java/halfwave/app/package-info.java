/** The main class, wiring, executors. */
@NullMarked
package halfwave.app;

import org.jspecify.annotations.NullMarked;
