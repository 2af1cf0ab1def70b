/**
 * What all files are read and written with: strict JSON, whole files or none, lines of CSV,
 * refusals that name the place. The themes below it know the files themselves.
 */
@NullMarked
package halfwave.io;

import org.jspecify.annotations.NullMarked;
