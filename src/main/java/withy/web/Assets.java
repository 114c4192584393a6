package withy.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The style sheet, scripts and pictures packed under {@code static/}, at addresses that change with
 * their content, so that browsers may keep them for good.
 */
public final class Assets implements RouteGroup {
  private static final String KEEP = "public, max-age=31536000, immutable";
  private static final String ASK_AGAIN = "no-cache";
  private static final Pattern NAME =
      Pattern.compile("[a-z0-9][a-z0-9-]*([./][a-z0-9][a-z0-9-]*)*");
  private static final Map<String, String> TYPES =
      Map.of(
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml; charset=utf-8",
          "txt", "text/plain; charset=utf-8",
          "webmanifest", "application/manifest+json; charset=utf-8",
          "png", "image/png",
          "ico", "image/x-icon",
          "woff2", "font/woff2");

  private final Map<String, Asset> read = new ConcurrentHashMap<>();

  private record Asset(byte[] content, String version) {}

  /**
   * The address of a file under {@code static/}.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public String url(String name) {
    Asset asset = find(name).orElseThrow(() -> new IllegalArgumentException("no file " + name));
    return "/static/" + asset.version() + "/" + name;
  }

  @Override
  public List<Route> routes() {
    return List.of(Route.get("/static/{version}/<name>", Role.ANYONE, this::send));
  }

  private void send(Visit visit) {
    String name = visit.context().pathParam("name");
    Asset asset = find(name).orElseThrow(() -> Declined.of(Fault.NOT_FOUND));
    boolean current = asset.version().equals(visit.context().pathParam("version"));
    visit.context().header("Cache-Control", current ? KEEP : ASK_AGAIN);
    visit.context().contentType(type(name)).result(asset.content());
  }

  private Optional<Asset> find(String name) {
    boolean fit = NAME.matcher(name).matches() && TYPES.containsKey(ending(name));
    if (!fit) {
      return Optional.empty();
    }
    Asset known = read.get(name);
    return known != null ? Optional.of(known) : load(name);
  }

  private Optional<Asset> load(String name) {
    try (InputStream in = Assets.class.getResourceAsStream("/static/" + name)) {
      if (in == null) {
        return Optional.empty();
      }
      byte[] content = in.readAllBytes();
      Asset asset = new Asset(content, version(content));
      read.put(name, asset);
      return Optional.of(asset);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String version(byte[] content) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
      return HexFormat.of().formatHex(digest, 0, 6);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java platform has SHA-256
    }
  }

  private static String type(String name) {
    return TYPES.getOrDefault(ending(name), "application/octet-stream");
  }

  private static String ending(String name) {
    return name.substring(name.lastIndexOf('.') + 1);
  }
}
