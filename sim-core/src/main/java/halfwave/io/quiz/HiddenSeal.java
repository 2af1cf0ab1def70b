package halfwave.io.quiz;

import com.fasterxml.jackson.databind.JsonNode;
import halfwave.io.BadInputException;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Hidden;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Closes what is hidden on a service call so that nobody reads it by opening the file. The program
 * has to open it to play the furnace, so the key is in the program: this stops peeking, and no
 * determined attacker.
 */
final class HiddenSeal {

  private static final String CIPHER = "AES/GCM/NoPadding";
  private static final int KEY_BYTES = 16;
  private static final int NONCE_BYTES = 12;
  private static final int TAG_BITS = 128;

  private HiddenSeal() {}

  /** Closes it. The same content gives the same text. */
  static String sealed(JsonNode hidden, String quiz, String call) {
    byte[] plain = hidden.toString().getBytes(StandardCharsets.UTF_8);
    // different contents never share a nonce under one key
    byte[] nonce = Arrays.copyOf(digest("nonce", quiz, call, hidden.toString()), NONCE_BYTES);
    byte[] closed = applied(Cipher.ENCRYPT_MODE, quiz, call, nonce, plain);
    byte[] all = Arrays.copyOf(nonce, nonce.length + closed.length);
    System.arraycopy(closed, 0, all, nonce.length, closed.length);
    return Base64.getEncoder().encodeToString(all);
  }

  /**
   * Opens it.
   *
   * @throws BadInputException if it was changed or belongs to another call
   */
  static List<Hidden> opened(JsonValue sealed, String quiz, String call) {
    try {
      byte[] all = Base64.getDecoder().decode(sealed.text());
      byte[] nonce = Arrays.copyOf(all, NONCE_BYTES);
      byte[] closed = Arrays.copyOfRange(all, NONCE_BYTES, Math.max(NONCE_BYTES, all.length));
      byte[] plain = applied(Cipher.DECRYPT_MODE, quiz, call, nonce, closed);
      return QuizFile.hidden(JsonFile.parse(sealed.file(), plain));
    } catch (IllegalArgumentException | IllegalStateException e) {
      throw sealed.refused(Message.of(MessageKey.ALLOWED_SEALED));
    }
  }

  private static byte[] applied(int mode, String quiz, String call, byte[] nonce, byte[] bytes) {
    try {
      Cipher cipher = Cipher.getInstance(CIPHER);
      byte[] key = Arrays.copyOf(digest("key", quiz, call), KEY_BYTES);
      cipher.init(mode, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
      return cipher.doFinal(bytes);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private static byte[] digest(String... parts) {
    try {
      String text = "halfwave quiz\n" + String.join("\n", parts);
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
