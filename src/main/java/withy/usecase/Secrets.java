package withy.usecase;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.random.RandomGenerator;

/** Makes what nobody may guess: ids, tokens, codes and the seeds of items. */
public final class Secrets {
  private static final int ID_BYTES = 16;
  private static final int TOKEN_BYTES = 32;
  private static final int OPTION_BYTES = 9;

  private final RandomGenerator random;

  Secrets(RandomGenerator random) {
    this.random = random;
  }

  /** Secrets from the machine's own source of chance. */
  public static Secrets secure() {
    return new Secrets(new SecureRandom());
  }

  /** An id of 128 bits, 32 lower-case hexadecimal digits. */
  public String id() {
    return HexFormat.of().formatHex(bytes(ID_BYTES));
  }

  /** A token of 256 bits in base64url. */
  public String token() {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(TOKEN_BYTES));
  }

  /** What stands for one option of one item on a learner's page. */
  String optionToken() {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(OPTION_BYTES));
  }

  /** A code that people read and type, of so many characters of {@link Codes#ALPHABET}. */
  String code(int length) {
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < length; i++) {
      code.append(Codes.ALPHABET.charAt(random.nextInt(Codes.ALPHABET.length())));
    }
    return code.toString();
  }

  /** The seed of an item. */
  public long seed() {
    return random.nextLong();
  }

  private byte[] bytes(int count) {
    byte[] bytes = new byte[count];
    random.nextBytes(bytes);
    return bytes;
  }

  /** The SHA-256 of a secret, in hexadecimal: what is kept in its place. */
  public static String digest(String secret) {
    return HexFormat.of().formatHex(sha256(secret));
  }

  /** Another token that whoever holds the first can make, and nobody else. */
  static String derived(String token, String purpose) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(sha256(purpose + ':' + token));
  }

  private static byte[] sha256(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java platform has SHA-256
    }
  }
}
