/** What the core says: a key and typed arguments. */
@NullMarked
package halfwave.message;

import org.jspecify.annotations.NullMarked;
