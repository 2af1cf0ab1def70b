/** Demonstrations with their claims, those that are shipped, and drafts of them. */
@NullMarked
package halfwave.io.lesson;

import org.jspecify.annotations.NullMarked;
