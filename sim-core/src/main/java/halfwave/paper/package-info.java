/**
 * What leaves the screen: pictures as PNG, SVG and PDF files, bench reports and handouts as pages,
 * demonstrations as picture sequences. Painted by {@code halfwave.picture}, so that printer, file
 * and screen show the same; pages carry their letters with them and can be searched.
 *
 * <pre>
 * Document = title, language, Picture for each page
 * </pre>
 *
 * <p>Pages are painted in points, 1/72 inch from the upper left corner. There is no clock: whoever
 * wants a date on a page hands it in.
 */
@NullMarked
package halfwave.paper;

import org.jspecify.annotations.NullMarked;
