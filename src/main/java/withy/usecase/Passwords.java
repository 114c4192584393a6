package withy.usecase;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.text.Normalizer;
import java.util.Locale;
import java.util.concurrent.Semaphore;

/**
 * Hashes passwords with Argon2id, 19 MiB and two passes (OWASP, Password Storage). Two at a time,
 * since many at once would take more memory than a laptop gives; a few more may wait.
 */
public final class Passwords {
  static final int SHORTEST = 8;
  static final int LONGEST = 200;
  private static final int AT_ONCE = 2;
  private static final int MOST_WAITING = 20;
  private static final int SALT_BYTES = 16;
  private static final int HASH_BYTES = 32;

  private final Semaphore turns = new Semaphore(AT_ONCE, true);
  private final Argon2Function argon2;

  private Passwords(Argon2Function argon2) {
    this.argon2 = argon2;
  }

  /** Hashes as strong as is advised. */
  public static Passwords argon2id() {
    return withCost(19456, 2);
  }

  static Passwords withCost(int kibibytes, int passes) {
    return new Passwords(Argon2Function.getInstance(kibibytes, passes, 1, HASH_BYTES, Argon2.ID));
  }

  /**
   * The hash of a new password.
   *
   * @throws Refused if it has fewer than 8 or more than 200 characters, or everybody tries it first
   */
  String hashNew(String password) {
    String composed = composed(password);
    int length = composed.codePointCount(0, composed.length());
    boolean common = CommonPasswords.ALL.contains(composed.toLowerCase(Locale.ROOT));
    if (length < SHORTEST || length > LONGEST || common) {
      throw new Refused(Reason.PASSWORD_UNFIT, SHORTEST, LONGEST);
    }
    return hash(password);
  }

  String hash(String password) {
    takeTurn();
    try {
      return Password.hash(composed(password)).addRandomSalt(SALT_BYTES).with(argon2).getResult();
    } finally {
      turns.release();
    }
  }

  /** Whether the password has the hash, whatever parameters the hash was made with. */
  boolean matches(String password, String hash) {
    if (isEndless(password)) {
      return false;
    }
    takeTurn();
    try {
      return Password.check(composed(password), hash)
          .with(Argon2Function.getInstanceFromHash(hash));
    } finally {
      turns.release();
    }
  }

  /** Takes as long as a wrong password, so that the time does not tell which names there are. */
  void matchNobody(String password) {
    if (!isEndless(password)) {
      hash(password);
    }
  }

  /** Nobody has so long a one, and hashing it would only cost time. */
  private static boolean isEndless(String password) {
    return password.length() > 4 * LONGEST;
  }

  /** Whether a hash was made with other parameters than are used now. */
  boolean isOutdated(String hash) {
    return !argon2.equals(Argon2Function.getInstanceFromHash(hash));
  }

  private void takeTurn() {
    if (turns.getQueueLength() >= MOST_WAITING) {
      throw new Refused(Reason.BUSY);
    }
    turns.acquireUninterruptibly();
  }

  private static String composed(String password) {
    return Normalizer.normalize(password, Normalizer.Form.NFC);
  }
}
