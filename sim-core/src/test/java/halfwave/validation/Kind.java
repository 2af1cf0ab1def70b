package halfwave.validation;

/** How a number is judged. */
enum Kind {
  /** Within an absolute difference of what is expected. */
  CLOSE,
  /** Within a share of what is expected. */
  CLOSE_BY_SHARE,
  /** Between two ends. */
  BAND,
  AT_LEAST,
  BELOW,
  ABOVE,
  /** Equal or not. */
  SAME,
  /** Known to lie outside a band of practice, and where. */
  DISAGREEMENT
}
