package halfwave.exchange;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/** Identifiers that follow from what they identify: RFC 9562, section 5.5, version 5. */
final class StatementId {

  /** The name space for IRIs (RFC 9562, section 6.6). */
  static final UUID OF_IRIS = UUID.fromString("6ba7b811-9dad-11d1-80b4-00c04fd430c8");

  private static final int BYTES = 16;

  private StatementId() {}

  /** The identifier of a name in a name space. */
  static UUID of(UUID space, String name) {
    ByteBuffer bytes = ByteBuffer.allocate(BYTES);
    bytes.putLong(space.getMostSignificantBits()).putLong(space.getLeastSignificantBits());
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-1");
      sha.update(bytes.array());
      ByteBuffer hash = ByteBuffer.wrap(sha.digest(name.getBytes(StandardCharsets.UTF_8)));
      long high = (hash.getLong() & ~0xF000L) | 0x5000L;
      long low = (hash.getLong() & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L;
      return new UUID(high, low);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
