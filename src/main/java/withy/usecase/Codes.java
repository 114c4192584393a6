package withy.usecase;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Locale;

/** Codes that people read aloud and type: letter case, spaces and hyphens do not matter. */
final class Codes {
  /** Without 0 O 1 I L U, which are mistaken for each other. */
  static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

  /** Of a class: 29 bits, enough while failed tries are limited. */
  static final int JOIN_LENGTH = 6;

  /** Of a learner: 59 bits, since it alone lets its holder in. */
  static final int RETURN_LENGTH = 12;

  static final int SET_UP_LENGTH = 12;
  private static final int GROUP = 4;

  private Codes() {}

  /** What was typed, as the code was made. */
  static String plain(String typed) {
    return typed.replaceAll("[\\s\\p{Z}\\p{Pd}]", "").toUpperCase(Locale.ROOT);
  }

  /** In groups of four, with hyphens. */
  static String grouped(String code) {
    StringBuilder grouped = new StringBuilder();
    for (int i = 0; i < code.length(); i += GROUP) {
      grouped.append(i == 0 ? "" : "-").append(code, i, Math.min(i + GROUP, code.length()));
    }
    return grouped.toString();
  }

  /** Whether both are the same code, in a time that does not tell how much of it is right. */
  static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        plain(one).getBytes(StandardCharsets.UTF_8), plain(other).getBytes(StandardCharsets.UTF_8));
  }
}
