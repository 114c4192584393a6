package withy.web.pages;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** The address of a page of ours, with what is asked of it. */
public final class Address {
  private final String path;
  private final Map<String, String> asked;

  private Address(String path, Map<String, String> asked) {
    this.path = path;
    this.asked = asked;
  }

  /** A page as it first shows itself. */
  public static Address of(String path) {
    return new Address(path, new LinkedHashMap<>());
  }

  /** The same page asked for something more; an empty value asks for nothing. */
  public Address with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(asked);
    if (value.isEmpty()) {
      more.remove(name);
    } else {
      more.put(name, value);
    }
    return new Address(path, more);
  }

  /** As a link holds it. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(path);
    asked.forEach(
        (name, value) ->
            text.append(text.length() == path.length() ? '?' : '&')
                .append(name)
                .append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8)));
    return text.toString();
  }
}
