package withy.web.site;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;

/** A person with a browser that runs no scripts: opens pages, follows links, fills in forms. */
final class Visitor {
  private final HttpClient client =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .cookieHandler(new CookieManager())
          .followRedirects(HttpClient.Redirect.NORMAL)
          .build();

  private final String origin;
  private @Nullable HttpResponse<String> answer;

  Visitor(int port) {
    this.origin = "http://127.0.0.1:" + port;
  }

  /** Opens a page. */
  Document get(String path) {
    return answered(HttpRequest.newBuilder(URI.create(origin + path)).build());
  }

  /** Follows the link that a selector finds. */
  Document follow(String selector) {
    return get(one(selector).attr("href"));
  }

  /** Sends a form with its hidden and preset fields, and others as names and values in turn. */
  Document send(String selector, String... typed) {
    Element form = one(selector);
    return post(form.attr("action"), fields(form, List.of(typed)));
  }

  /** Answers the item that is open with the first of what it offers, or with a number. */
  Document answer() {
    List<String> typed = new ArrayList<>();
    for (Element slot : page().select(".slot")) {
      Element first = slot.expectFirst("input");
      typed.addAll(List.of(first.attr("name"), first.val()));
    }
    if (!page().select("#number").isEmpty()) {
      typed.addAll(List.of("number", "7"));
    } else if (typed.isEmpty()) {
      typed.addAll(List.of("option", one(".options input").val()));
    }
    return send("form.answer", typed.toArray(String[]::new));
  }

  /** Sends fields as names and values in turn. */
  Document post(String path, List<String> fields) {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.size(); i += 2) {
      body.append(i == 0 ? "" : "&").append(encoded(fields.get(i))).append('=');
      body.append(encoded(fields.get(i + 1)));
    }
    return answered(
        HttpRequest.newBuilder(URI.create(origin + path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(body.toString()))
            .build());
  }

  /** The fields of a form as a browser sends them, with some typed. */
  static List<String> fields(Element form, List<String> typed) {
    List<String> fields = new ArrayList<>();
    for (Element input : form.select("input[name]")) {
      boolean ticked = !input.attr("type").matches("radio|checkbox") || input.hasAttr("checked");
      if (ticked && !typedNames(typed).contains(input.attr("name"))) {
        fields.addAll(List.of(input.attr("name"), input.attr("value")));
      }
    }
    fields.addAll(typed);
    return fields;
  }

  private static List<String> typedNames(List<String> typed) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < typed.size(); i += 2) {
      names.add(typed.get(i));
    }
    return names;
  }

  /** The page that is open. */
  Document page() {
    return Jsoup.parse(text());
  }

  /** What was sent for the page that is open. */
  String text() {
    return last().body();
  }

  int status() {
    return last().statusCode();
  }

  /** The address of the page that is open, without the server. */
  String path() {
    return last().uri().toString().substring(origin.length());
  }

  /** The one element that a selector finds. */
  Element one(String selector) {
    return page().expectFirst(selector);
  }

  private HttpResponse<String> last() {
    return Objects.requireNonNull(answer, "no page is open");
  }

  private Document answered(HttpRequest request) {
    try {
      answer = client.send(request, BodyHandlers.ofString());
      return page();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, UTF_8);
  }
}
