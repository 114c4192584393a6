package withy.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Somebody with a browser or a script of their own: keeps the cookie, sends the token. */
public final class Browser {
  private static final HttpClient CLIENT =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  private final int port;
  private final Map<String, String> headers = new LinkedHashMap<>();
  private @Nullable String cookie;

  public Browser(int port) {
    this.port = port;
  }

  /** Another one on the same cookie and the same headers. */
  public Browser copy() {
    Browser other = new Browser(port);
    other.headers.putAll(headers);
    other.cookie = cookie;
    return other;
  }

  public Browser with(String header, String value) {
    Browser other = copy();
    other.headers.put(header, value);
    return other;
  }

  public Browser without(String header) {
    Browser other = copy();
    other.headers.remove(header);
    return other;
  }

  public Browser withCookie(@Nullable String value) {
    Browser other = copy();
    other.cookie = value;
    return other;
  }

  public @Nullable String cookie() {
    return cookie;
  }

  public HttpResponse<String> get(String path) {
    return send("GET", path, null, BodyPublishers.noBody());
  }

  public HttpResponse<String> postJson(String path, String json) {
    return send("POST", path, "application/json", BodyPublishers.ofString(json));
  }

  public HttpResponse<String> postForm(String path, String form) {
    return send("POST", path, "application/x-www-form-urlencoded", BodyPublishers.ofString(form));
  }

  public HttpResponse<String> call(String method, String path) {
    return send(method, path, null, BodyPublishers.noBody());
  }

  public HttpResponse<String> send(
      String method, String path, @Nullable String type, BodyPublisher body) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).method(method, body);
    headers.forEach(request::header);
    if (type != null) {
      request.header("Content-Type", type);
    }
    if (cookie != null) {
      request.header("Cookie", "sid=" + cookie);
    }
    HttpResponse<String> response = sent(request.build());
    response.headers().allValues("Set-Cookie").forEach(this::keep);
    return response;
  }

  private void keep(String header) {
    String value = header.substring(header.indexOf('=') + 1, header.indexOf(';'));
    cookie = value.isEmpty() ? null : value;
  }

  private static HttpResponse<String> sent(HttpRequest request) {
    try {
      return CLIENT.send(request, BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
