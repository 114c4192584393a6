package withy.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.core.item.Concept;
import withy.core.response.Response;
import withy.store.StoreRefused.Problem;
import withy.usecase.Assignment;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.usecase.Session;

class StoreTest {
  private static final Clock CLOCK = Clock.systemUTC();

  @TempDir Path temp;
  private Path data = Path.of("");
  private Path steps = Path.of("");

  @BeforeEach
  void copyTheRealSteps() throws IOException {
    data = temp.resolve("data");
    steps = Files.createDirectory(temp.resolve("steps"));
    try (Stream<Path> real = Files.list(Path.of("db"))) {
      for (Path each : real.toList()) {
        Files.copy(each, steps.resolve(each.getFileName()));
      }
    }
  }

  @Test
  void makesItsFolderForTheOwnerAlone() throws IOException {
    try (Store store = Store.open(data, CLOCK)) {
      assertThat(store.isAlive()).isTrue();
      assertThat(store.ports().instructors().isEmpty()).isTrue();
    }
    assertThat(data.resolve("withy.mv.db")).exists();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data)))
        .isEqualTo("rwx------");
  }

  @Test
  void keepsSessionsAndAnswersOverARestart() {
    SchoolClass tuesday;
    Session session;
    Assignment drill;
    IssuedItem open;
    Response answered;
    try (Store store = Store.open(data, CLOCK)) {
      School school = School.over(store.ports());
      tuesday = school.schoolClass();
      session = school.cases().joinClass().join(tuesday.code(), "Tern").session();
      LearnerCaller tern = (LearnerCaller) session.caller();
      drill = school.assignment(tuesday, 5, Concept.LATERAL_SIDE);
      school.answerRight(tern, drill, 1);
      open = school.next(tern, drill);
      answered = school.cases().reviewClass().responses(school.instructor(), tuesday.id()).get(0);
    }

    try (Store store = Store.open(data, CLOCK)) {
      School school = School.over(store.ports());
      assertThat(school.cases().signIn().resume(session.token())).contains(session);
      LearnerCaller tern = (LearnerCaller) session.caller();
      assertThat(school.next(tern, drill)).isEqualTo(open);
      assertThat(school.cases().reviewClass().responses(school.instructor(), tuesday.id()))
          .containsExactly(answered);
      assertThat(store.ports().assignments().find(drill.id())).contains(drill);
    }
  }

  @Test
  void isForOneProgramAtATime() throws Exception {
    try (Store store = Store.open(data, CLOCK)) {
      assertThat(store.isAlive()).isTrue();
      // another program: this one's own second connection would be let in
      Process other =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  OtherProgram.class.getName(),
                  data.toString())
              .redirectErrorStream(true)
              .start();
      String said = new String(other.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(said.strip()).endsWith("IN_USE");
      assertThat(other.waitFor()).isZero();
    }
  }

  @Test
  void copiesTheDatabaseBeforeItBringsItUpToDate() throws IOException {
    fillAndClose();
    step("V998__more.sql", "ALTER TABLE learner ADD COLUMN shoe_size INT;");

    openWithSteps().close();

    assertThat(backups()).hasSize(1);
    assertThat(backups().get(0).getFileName().toString()).startsWith("before-998-");
    openWithSteps().close();
    assertThat(backups()).hasSize(1);
  }

  @Test
  void putsTheDatabaseBackWhenAStepFails() throws IOException {
    fillAndClose();
    step("V998__half.sql", "ALTER TABLE learner ADD COLUMN shoe_size INT;\nSELECT * FROM nowhere;");

    StoreRefused refused = refused(this::openWithSteps);

    assertThat(refused.problem()).isEqualTo(Problem.MIGRATION_FAILED);
    assertThat(refused.sentence(Locale.ENGLISH)).contains("withy.mv.db").doesNotContain("\n");
    assertThat(data.resolve("withy.mv.db.failed")).doesNotExist();
    try (Store before = Store.open(data, CLOCK)) {
      assertThat(before.ports().instructors().byName("marlo")).isPresent();
    }
    Files.delete(steps.resolve("V998__half.sql"));
    step("V998__whole.sql", "ALTER TABLE learner ADD COLUMN shoe_size INT;");
    openWithSteps().close();
  }

  @Test
  void refusesADatabaseOfANewerVersion() throws IOException {
    fillAndClose();
    step("V998__more.sql", "ALTER TABLE learner ADD COLUMN shoe_size INT;");
    openWithSteps().close();

    assertThat(refused(() -> Store.open(data, CLOCK)).problem()).isEqualTo(Problem.NEWER);
  }

  @Test
  void refusesADatabaseThatWasLeftHalfWay() {
    fillAndClose();
    inDatabase(
        "UPDATE \"flyway_schema_history\" SET \"success\" = FALSE WHERE \"version\" = '001'");

    assertThat(refused(() -> Store.open(data, CLOCK)).problem()).isEqualTo(Problem.BROKEN_HISTORY);
  }

  @Test
  void refusesStepsThatWereChangedSince() throws IOException {
    openWithSteps().close();
    Path first = steps.resolve("V001__classes_and_responses.sql");
    Files.writeString(first, Files.readString(first) + "\nCREATE TABLE other (id INT);\n");

    assertThat(refused(this::openWithSteps).problem()).isEqualTo(Problem.BROKEN_HISTORY);
  }

  @Test
  void refusesAFileThatIsNoDatabase() throws IOException {
    Files.createDirectory(data);
    Files.writeString(data.resolve("withy.mv.db"), "no database ".repeat(1000));

    StoreRefused refused = refused(() -> Store.open(data, CLOCK));

    assertThat(refused.problem()).isEqualTo(Problem.UNREADABLE);
    assertThat(refused.sentence(Locale.ENGLISH)).startsWith(data.toString());
  }

  @Test
  void refusesAFolderThatIsAFile() throws IOException {
    Files.writeString(data, "a file");

    assertThatExceptionOfType(StoreRefused.class).isThrownBy(() -> Store.open(data, CLOCK));
  }

  private Store openWithSteps() {
    return Store.open(data, CLOCK, "filesystem:" + steps);
  }

  private void step(String name, String sql) throws IOException {
    Files.writeString(steps.resolve(name), sql);
  }

  private List<Path> backups() throws IOException {
    try (Stream<Path> files = Files.list(data.resolve("backups"))) {
      return files.toList();
    }
  }

  private void fillAndClose() {
    try (Store store = Store.open(data, CLOCK)) {
      School.over(store.ports()).schoolClass();
    }
  }

  private void inDatabase(String sql) {
    String url = DataFolder.of(data).url();
    try (Handle handle = Jdbi.open(() -> Database.connect(url))) {
      handle.execute(sql);
    }
    Database.shutDown(url);
  }

  private static StoreRefused refused(ThrowingCallable call) {
    return catchThrowableOfType(StoreRefused.class, call);
  }
}
