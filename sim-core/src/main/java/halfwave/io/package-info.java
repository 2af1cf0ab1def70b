/** Versioned files with published JSON Schemas, CSV, decks for ngspice. */
@NullMarked
package halfwave.io;

import org.jspecify.annotations.NullMarked;
