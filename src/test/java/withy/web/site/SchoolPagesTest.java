package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a colleague comes into the school, and what is then seen of each other. */
class SchoolPagesTest {
  @TempDir private Path folder;
  private OpenServer server;
  private Visitor jo;

  @BeforeEach
  void start() throws BindException {
    server = OpenServer.on(folder);
    jo = server.instructor();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private Visitor colleague(String path) {
    Visitor colleague = server.visitor();
    colleague.get(path);
    colleague.send("main form", "name", "Ina Voss", "password", "reeds at low water");
    return colleague;
  }

  private String invited() {
    jo.get("/school");
    jo.send("form[action$=invitations]");
    return jo.one(".join-link a").attr("href");
  }

  @Test
  void theLinkOfAnInvitationLeadsAColleagueIn() {
    String link = invited();
    assertThat(link).startsWith("/join-school?code=");
    assertThat(jo.path()).isEqualTo("/school");
    assertThat(jo.one(".join-link a").text()).endsWith(link);
    Visitor ina = colleague(link);
    assertThat(ina.path()).isEqualTo("/classes");
    assertThat(ina.one(".who").text()).isEqualTo("Ina Voss");
    assertThat(ina.get("/school").select("main li").eachText())
        .containsExactly("Ina Voss", OpenServer.NAME);
    assertThat(jo.get("/school").select(".assigned")).isEmpty();
    Visitor late = colleague(link);
    assertThat(late.status()).isEqualTo(422);
    assertThat(late.one("#code-problem").text()).contains("used");
    assertThat(late.one("#name").val()).isEqualTo("Ina Voss");
    assertThat(late.text()).doesNotContain("reeds at low water");
  }

  @Test
  void aWithdrawnInvitationIsGoodForNothing() {
    String link = invited();
    jo.send("form[action$=withdraw]");
    assertThat(jo.one(".news").text()).contains("withdrawn");
    assertThat(jo.page().select(".assigned")).isEmpty();
    assertThat(colleague(link).status()).isEqualTo(422);
  }

  @Test
  void aClassIsHandedToAColleague() {
    jo.get("/classes");
    jo.send("main form", "name", "Tuesday", "practice", "iala-a");
    String tuesday = jo.path().replaceFirst("\\?.*", "");
    assertThat(jo.page().select("#hand-over")).isEmpty();
    Visitor ina = colleague(invited());
    jo.get(tuesday);
    jo.send("#hand-over", "colleague", "");
    assertThat(jo.status()).isEqualTo(422);
    assertThat(jo.one("#colleague-problem").text()).contains("Choose the colleague");
    String voss = jo.page().select("#colleague option").last().val();
    jo.send("#hand-over", "colleague", voss);
    assertThat(jo.one(".news").text()).contains("handed over");
    assertThat(jo.page().select(".drills .name")).isEmpty();
    assertThat(jo.get(tuesday).select("#hand-over")).isEmpty();
    assertThat(jo.status()).isEqualTo(404);
    assertThat(ina.get("/classes").select(".drills .name").text()).isEqualTo("Tuesday");
  }

  @Test
  void colleaguesSeeSharedSetsAndNoClasses() {
    jo.get("/classes");
    jo.send("main form", "name", "Tuesday", "practice", "iala-a");
    String tuesday = jo.path().replaceFirst("\\?.*", "");
    jo.get("/drill-sets/by-night");
    jo.send("form[action$=copy]", "title", "Our nights");
    String mine = jo.path().replaceFirst("\\?.*", "");
    Visitor ina = colleague(invited());
    assertThat(ina.text()).doesNotContain("Tuesday");
    for (String each : new String[] {"", "/review", "/plan", "/compose"}) {
      ina.get(tuesday + each);
      assertThat(ina.status()).as(each).isEqualTo(404);
    }
    ina.get(mine);
    assertThat(ina.status()).isEqualTo(404);
    jo.get(mine);
    jo.send("form[action$=share]", "shared", "yes");
    assertThat(jo.one(".news").text()).contains("shared");
    assertThat(ina.get("/drill-sets").text()).contains("Our nights", "kept by " + OpenServer.NAME);
    ina.get(mine);
    assertThat(ina.one(".lead").text()).contains(OpenServer.NAME);
    assertThat(ina.page().select("form[action$=delete], form[action$=share]")).isEmpty();
    ina.send("form[action$=copy]", "title", "Mine now");
    assertThat(ina.one("h1").text()).isEqualTo("Mine now");
  }
}
