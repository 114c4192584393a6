package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import withy.ClubServer;

/** The description of the calls and the route table say the same. */
class OpenApiTest {
  private static final Pattern PATH = Pattern.compile("^  (/\\S*):$");
  private static final Pattern METHOD = Pattern.compile("^    (get|post|put|patch|delete):$");

  @Test
  void tellsOfEveryCallAndOfNoOther() {
    try (ClubServer club = ClubServer.start()) {
      HttpResponse<String> served = club.nobody().get("/api/openapi.yaml");
      assertThat(served.headers().firstValue("Content-Type"))
          .hasValue("application/yaml; charset=utf-8");
      TreeSet<String> calls = new TreeSet<>();
      for (Route each : club.routes()) {
        if (each.surface() != Surface.PAGE) {
          calls.add(each.method() + " " + each.path());
        }
      }
      assertThat(described(served.body())).isEqualTo(calls);
    }
  }

  private static TreeSet<String> described(String yaml) {
    TreeSet<String> calls = new TreeSet<>();
    String path = "";
    for (String line : yaml.lines().toList()) {
      Matcher named = PATH.matcher(line);
      if (named.matches()) {
        path = named.group(1);
      }
      Matcher method = METHOD.matcher(line);
      if (method.matches()) {
        calls.add(method.group(1).toUpperCase(Locale.ROOT) + " " + path);
      }
    }
    return calls;
  }
}
