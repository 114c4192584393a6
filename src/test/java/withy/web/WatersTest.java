package withy.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import withy.ClubServer;
import withy.catalogue.WaterReader;

/** Waters over HTTP, by pages and by scripts. */
class WatersTest {
  private static final String FILE = new WaterReader().authored().get(0).text();
  private static final String UNFIT = FILE.replace("\"width\": 104", "\"width\": \"wide\"");
  private static final String EDGE = "edge-of-parts";

  private static ClubServer club;
  private static Browser instructor;

  @BeforeAll
  static void start() {
    club = ClubServer.start();
    instructor = club.instructor();
  }

  @AfterAll
  static void stop() {
    club.close();
  }

  private static String part(String name, String rest, String text) {
    return "--%s\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n\r\n%s\r\n"
        .formatted(EDGE, name, rest, text);
  }

  private static HttpResponse<String> sent(Browser browser, String file, String title) {
    return browser.send(
        "POST",
        "/waters",
        "multipart/form-data; boundary=" + EDGE,
        BodyPublishers.ofString(form(file, title)));
  }

  private static String form(String file, String title) {
    return part("file", "; filename=\"water.geojson\"\r\nContent-Type: application/geo+json", file)
        + part("title", "", title)
        + "--"
        + EDGE
        + "--\r\n";
  }

  private static String imported(Browser browser, String title) {
    HttpResponse<String> response = sent(browser, FILE, title);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
    String place = response.headers().firstValue("Location").orElseThrow();
    return place.substring("/waters/".length(), place.indexOf('?'));
  }

  @Test
  void pageTakesAFileInAndShowsItsChartUnderEveryPractice() {
    String id = imported(instructor, "Our <b>estuary</b>");
    for (String practice : new String[] {"iala-a", "iala-b", "canada", "usa"}) {
      Document page = Jsoup.parse(instructor.get("/waters/" + id + "?practice=" + practice).body());
      assertThat(page.selectFirst("h1").text()).isEqualTo("Our <b>estuary</b>");
      assertThat(page.select(".chart svg path")).isNotEmpty();
      assertThat(page.select("[aria-current]")).isNotEmpty();
    }
    assertThat(instructor.get("/waters").body()).contains("/waters/" + id);
  }

  @Test
  void pageListsEveryProblemByItsPlaceAndKeepsTheFile() {
    HttpResponse<String> response = sent(instructor, UNFIT, "Half done");
    assertThat(response.statusCode()).isEqualTo(422);
    Document page = Jsoup.parse(response.body());
    assertThat(page.select(".in-file li").text())
        .contains("features[30].properties.width")
        .contains("no number");
    assertThat(page.selectFirst("textarea").wholeText().strip()).isEqualTo(UNFIT.strip());
    assertThat(page.selectFirst("#title").val()).isEqualTo("Half done");
  }

  @Test
  void mendedTextMayBeAsLargeAsAFile() {
    String large = FILE + " ".repeat((1 << 20) - FILE.getBytes(StandardCharsets.UTF_8).length);
    String body = part("text", "", large) + part("title", "", "Long") + "--" + EDGE + "--\r\n";
    HttpResponse<String> response =
        instructor.send(
            "POST",
            "/waters",
            "multipart/form-data; boundary=" + EDGE,
            BodyPublishers.ofString(body));
    assertThat(response.statusCode()).isEqualTo(303);
  }

  @Test
  void mendedTextIsTakenInPlaceOfAFile() {
    String body = part("text", "", FILE) + part("title", "", "Mended") + "--" + EDGE + "--\r\n";
    HttpResponse<String> response =
        instructor.send(
            "POST",
            "/waters",
            "multipart/form-data; boundary=" + EDGE,
            BodyPublishers.ofString(body));
    assertThat(response.statusCode()).isEqualTo(303);
  }

  @Test
  void fileComesBackAsItWasSent() {
    String id = imported(instructor, "Back again");
    HttpResponse<String> file = instructor.get("/waters/" + id + "/file");
    assertThat(file.body()).isEqualTo(FILE);
    assertThat(file.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/geo+json");
    assertThat(file.headers().firstValue("Content-Disposition").orElseThrow())
        .contains("attachment");
  }

  @Test
  void anothersWaterIsNotThere() {
    String id = imported(instructor, "Mine");
    Browser other = club.otherInstructor();
    assertThat(other.get("/waters/" + id).statusCode()).isEqualTo(404);
    assertThat(other.postForm("/waters/" + id + "/delete", "").statusCode()).isEqualTo(404);
    assertThat(other.get("/waters").body()).doesNotContain(id);
    assertThat(instructor.get("/waters/" + id).statusCode()).isEqualTo(200);
  }

  @Test
  void waterThatComesWithTheProgramCannotBeDeleted() {
    assertThat(instructor.postForm("/waters/home-water/delete", "").statusCode()).isEqualTo(404);
  }

  @Test
  void nothingIsTakenWithoutTheTokenOfAForm() {
    Browser without = instructor.copy().without("X-Request-Token");
    assertThat(sent(without, FILE, "Forged").statusCode()).isEqualTo(403);
    assertThat(instructor.get("/waters").body()).doesNotContain("Forged");
  }

  @Test
  void filesMayBeLargeButNotTooLarge() throws IOException {
    assertThat(sent(instructor, "x".repeat(900_000), "").statusCode()).isEqualTo(422);
    List<String> headers =
        List.of(
            "Accept: text/html",
            "Content-Type: multipart/form-data; boundary=" + EDGE,
            "Cookie: sid=" + instructor.cookie());
    byte[] larger = form("x".repeat(1_400_000), "").getBytes(StandardCharsets.UTF_8);
    assertThat(Wire.post(club.port(), "/waters", headers, larger).status()).isEqualTo(413);
  }

  @Test
  void scriptsTakeAFileInAndSetADrillInIt() {
    HttpResponse<String> taken =
        instructor.send(
            "POST",
            "/api/waters?title=By%20script",
            "application/geo+json",
            BodyPublishers.ofString(FILE));
    assertThat(taken.statusCode()).as(taken.body()).isEqualTo(201);
    String id = json(taken).get("id").textValue();
    JsonNode tuesday = ClubServer.schoolClass(instructor, "canada");
    String drill =
        "{\"class\":\"%s\",\"composition\":{\"length\":3,\"forms\":[\"side\"],\"water\":\"%s\"}}"
            .formatted(tuesday.get("id").textValue(), id);
    HttpResponse<String> assigned = instructor.postJson("/api/assignments", drill);
    assertThat(assigned.statusCode()).as(assigned.body()).isEqualTo(201);
    assertThat(instructor.postForm("/waters/" + id + "/delete", "").statusCode()).isEqualTo(303);
    Browser learner = club.learner(tuesday.get("code").textValue(), "Tern");
    String next = "/api/assignments/" + json(assigned).get("id").textValue() + "/next";
    assertThat(learner.get(next).statusCode()).isEqualTo(200);
    assertThat(instructor.postJson("/api/assignments", drill).statusCode()).isEqualTo(404);
  }

  @Test
  void scriptsAreToldEveryProblem() {
    HttpResponse<String> refused =
        instructor.send(
            "POST", "/api/waters", "application/geo+json", BodyPublishers.ofString(UNFIT));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/problem+json");
    assertThat(json(refused).get("problems").get(0).get("place").textValue())
        .isEqualTo("features[30].properties.width");
  }

  @Test
  void fileThatIsNotUtf8IsRefusedAndNotDamaged() {
    byte[] latin = FILE.replace("\"title\": \"", "\"title\": \"\u00c5").getBytes(ISO_8859_1);
    HttpResponse<String> refused =
        instructor.send(
            "POST", "/api/waters", "application/geo+json", BodyPublishers.ofByteArray(latin));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(json(refused).get("problems").get(0).get("text").textValue()).contains("not UTF-8");
    HttpResponse<String> page =
        instructor.send(
            "POST",
            "/waters",
            "multipart/form-data; boundary=" + EDGE,
            BodyPublishers.ofByteArray(
                form(new String(latin, ISO_8859_1), "").getBytes(ISO_8859_1)));
    assertThat(page.statusCode()).isEqualTo(422);
    assertThat(Jsoup.parse(page.body()).select(".in-file li").text()).contains("not UTF-8");
  }

  @Test
  void leadingByteOrderMarkIsSkipped() {
    HttpResponse<String> taken =
        instructor.send(
            "POST",
            "/api/waters?title=Marked",
            "application/geo+json",
            BodyPublishers.ofString("\uFEFF" + FILE));
    assertThat(taken.statusCode()).as(taken.body()).isEqualTo(201);
    assertThat(sent(instructor, "\uFEFF" + FILE, "Marked too").statusCode()).isEqualTo(303);
  }

  @Test
  void drillInWaterThatHasNothingOfItIsRefused() {
    JsonNode tuesday = ClubServer.schoolClass(instructor, "iala-a");
    String drill =
        "{\"class\":\"%s\",\"composition\":{\"length\":3,\"forms\":[\"light\"],\"water\":\"home-water\"}}"
            .formatted(tuesday.get("id").textValue());
    HttpResponse<String> refused = instructor.postJson("/api/assignments", drill);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("nothing-to-drill");
  }
}
