package halfwave.notebook;

/** What a notebook says is not so. */
public final class ClaimFailsException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  ClaimFailsException(String claim) {
    super(claim);
  }
}
