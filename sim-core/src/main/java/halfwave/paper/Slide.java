package halfwave.paper;

import halfwave.picture.Picture;

/**
 * One picture of a sequence.
 *
 * @param name what its file is called, without an ending; names sort in the order of showing
 * @param picture the picture
 * @param shownSeconds how long a class needs to read it (s)
 */
public record Slide(String name, Picture picture, double shownSeconds) {}
