package withy.web;

import java.util.List;
import java.util.Map;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/** The headers that every response carries, whoever writes it: page, file, error, refusal. */
final class SecurityHeaders implements HttpConfiguration.Customizer {
  static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; object-src 'none';"
          + " frame-ancestors 'none'; manifest-src 'self'; worker-src 'self'";

  static final List<Map.Entry<String, String>> ALL =
      List.of(
          Map.entry("Content-Security-Policy", POLICY),
          Map.entry("X-Content-Type-Options", "nosniff"),
          Map.entry("Referrer-Policy", "same-origin"),
          Map.entry("Cross-Origin-Opener-Policy", "same-origin"),
          Map.entry("Cross-Origin-Resource-Policy", "same-origin"),
          Map.entry("Permissions-Policy", "camera=(), microphone=(), geolocation=()"),
          Map.entry("Cache-Control", "no-store"));

  @Override
  public Request customize(Request request, HttpFields.Mutable responseHeaders) {
    put(responseHeaders);
    return request;
  }

  static void put(HttpFields.Mutable headers) {
    for (Map.Entry<String, String> each : ALL) {
      headers.put(each.getKey(), each.getValue());
    }
  }
}
