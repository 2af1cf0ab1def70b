package halfwave.notebook.kernel;

/**
 * A cell that could not be run to its end. Its message is all that its writer needs, so it carries
 * no trace of the kernel's own calls.
 */
final class CellFailure extends RuntimeException {

  private static final long serialVersionUID = 1L;

  CellFailure(String message) {
    super(message, null, false, false);
  }
}
