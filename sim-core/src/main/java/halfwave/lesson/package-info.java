/** What is taught with a bench: demonstrations that ask for a prediction before they show. */
@NullMarked
package halfwave.lesson;

import org.jspecify.annotations.NullMarked;
