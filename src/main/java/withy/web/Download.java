package withy.web;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import java.util.Locale;

/** Names a response as a file to be saved (RFC 6266, RFC 8187). */
public final class Download {
  private static final String UNRESERVED =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";

  private Download() {}

  /** The response is a file of this name and ending; the name may be any text. */
  public static void as(Context context, String name, String ending) {
    context.header("Content-Disposition", disposition(name, ending));
  }

  static String disposition(String name, String ending) {
    String plain = name.replaceAll("[^A-Za-z0-9 ._-]", "_");
    return "attachment; filename=\"%s.%s\"; filename*=UTF-8''%s.%s"
        .formatted(plain, ending, encoded(name.replaceAll("[\\p{Cntrl}/\\\\]", "_")), ending);
  }

  private static String encoded(String text) {
    StringBuilder encoded = new StringBuilder();
    for (byte each : text.getBytes(UTF_8)) {
      String sign = new String(new byte[] {each}, US_ASCII);
      boolean plain = each > 0 && UNRESERVED.contains(sign);
      encoded.append(plain ? sign : String.format(Locale.ROOT, "%%%02X", each & 0xff));
    }
    return encoded.toString();
  }
}
