/** Versioned files with published JSON Schemas, CSV, SPICE, QTI, xAPI. */
@NullMarked
package halfwave.io;

import org.jspecify.annotations.NullMarked;
