package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first start, as its page has it. */
class SetUpPageTest {
  @TempDir private Path folder;

  @Test
  void setsTheServerUpOnceAndKeepsTheNameButNotThePasswordOfARefusedTry() throws BindException {
    try (OpenServer server = OpenServer.on(folder)) {
      Visitor visitor = server.visitor();
      visitor.get("/set-up");
      visitor.send("main form", "code", "WRONG", "name", "Jo", "password", OpenServer.PASSWORD);
      assertThat(visitor.status()).isEqualTo(422);
      assertThat(visitor.one("#name").val()).isEqualTo("Jo");
      assertThat(visitor.text()).doesNotContain(OpenServer.PASSWORD);
      Visitor instructor = server.firstInstructor();
      assertThat(instructor.path()).isEqualTo("/classes");
      assertThat(instructor.one(".empty").text()).contains("Make the first one");
      assertThat(server.visitor().get("/set-up").expectFirst("h1").text())
          .isEqualTo("Sign in as an instructor");
    }
  }
}
