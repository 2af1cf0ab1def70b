package halfwave.cli;

import halfwave.message.Message;

/** Ends a command with an exit status and a sentence. */
final class CommandFailedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int status;
  private final transient Message said;

  CommandFailedException(int status, Message said) {
    super(said.toString());
    this.status = status;
    this.said = said;
  }

  int status() {
    return status;
  }

  Message said() {
    return said;
  }
}
