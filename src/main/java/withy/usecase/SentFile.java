package withy.usecase;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The text of a file that somebody sends. */
public final class SentFile {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private SentFile() {}

  /**
   * The text without the byte order mark that may lead it (RFC 8259, 8.1).
   *
   * @throws UnfitWater if the file is not UTF-8; nothing in it is replaced
   */
  public static String text(byte[] sent) throws UnfitWater {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(sent))
              .toString();
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new UnfitWater(List.of(new WaterProblem("", "not-utf-8", List.of())));
    }
  }
}
