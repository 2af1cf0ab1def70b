/**
 * What a drawing of a bench is asked for: the bench at an instant, its parts and what the rod is
 * gripped by, the view, the style.
 */
@NullMarked
package halfwave.picture.scene;

import org.jspecify.annotations.NullMarked;
