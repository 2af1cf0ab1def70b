package halfwave.message;

/**
 * What can be said. The sentence of each key, in each language, stands in the bundle {@code
 * halfwave/display/sentences} under {@code message.} and the key's name in lower case with hyphens.
 * Arguments are listed here in their order.
 */
public enum MessageKey {
  /** A finite number. */
  ALLOWED_FINITE,
  /** A finite number above zero. */
  ALLOWED_POSITIVE,
  /** A finite number, zero or above. */
  ALLOWED_NOT_NEGATIVE,
  /** Ohms, zero or above, or open. */
  ALLOWED_RESISTANCE,
  /** A number in a range: lowest, highest. */
  ALLOWED_RANGE,
  /** A list with enough entries: least count. */
  ALLOWED_ENTRIES,
  /** A rod that does not run through the burner. */
  ALLOWED_CLEAR_OF_BURNER,
  /** A name that is not taken and not empty. */
  ALLOWED_NAME,
  /** A value that fits the fields beside it. */
  ALLOWED_CONSISTENT,

  /** A JSON object. */
  ALLOWED_OBJECT,
  /** A JSON list. */
  ALLOWED_LIST,
  /** A JSON list of an exact length: the count. */
  ALLOWED_LIST_OF,
  /** A JSON string. */
  ALLOWED_TEXT,
  /** A whole number. */
  ALLOWED_WHOLE_NUMBER,
  /** True or false. */
  ALLOWED_TRUTH,
  /** One of several words: the words. */
  ALLOWED_ONE_OF,
  /** Something, or null: what else. */
  ALLOWED_OR_NULL,
  /** No other fields than some: their names. */
  ALLOWED_FIELDS,
  /** A field stands once in its object. */
  ALLOWED_ONCE,
  /** Correct JSON to the end of the file: line, column. */
  ALLOWED_JSON,
  /** Nothing after the end of the JSON value: line, column. */
  ALLOWED_NOTHING_MORE,
  /** A circuit, a list of circuits, or a list of rows. */
  ALLOWED_CIRCUIT_FILE,
  /** A number from one to the count of circuits: the count. */
  ALLOWED_CIRCUIT_NUMBER,
  /** A file that exists. */
  ALLOWED_EXISTING_FILE,
  /** A file, where a folder was named. */
  ALLOWED_FILE_NOT_FOLDER,
  /** A file that can be read. */
  ALLOWED_READABLE_FILE,
  /** A place where a file can be written. */
  ALLOWED_WRITABLE_FILE,
  /** A circuit that has a periodic steady state: why this one has none. */
  ALLOWED_SOLVABLE,

  /** Stands for a value that is missing. */
  VALUE_MISSING,
  /** Stands for a value that the file ends or breaks off in. */
  VALUE_BROKEN_OFF,

  /** A bad field: file, field, value, what is allowed. */
  BAD_FIELD,
  /** A bad file: file, what is allowed. */
  BAD_FILE,

  /** A circuit has no steady state by its build: why, part in trouble. */
  SOLVE_IMPOSSIBLE,
  /** A solve failed: why, part in trouble, time within the period, iterations. */
  SOLVE_FAILED,

  /** Bad usage, an argument that nothing expects: command, argument. */
  USAGE_UNKNOWN_ARGUMENT,
  /** Bad usage, something is missing: command, its label. */
  USAGE_MISSING_ARGUMENT,
  /** Bad usage, a value that an option does not take: command, option, value, what is allowed. */
  USAGE_BAD_VALUE,
  /** Bad usage of another kind: command. */
  USAGE_BAD,
  /** An internal failure: what the runtime says. */
  INTERNAL_FAILURE
}
