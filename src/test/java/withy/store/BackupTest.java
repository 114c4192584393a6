package withy.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.core.item.Concept;
import withy.core.response.Response;
import withy.store.StoreRefused.Problem;
import withy.usecase.Assignment;
import withy.usecase.BackupOffice;
import withy.usecase.LearnerCaller;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.School;
import withy.usecase.SchoolClass;

class BackupTest {
  private static final Clock CLOCK = Clock.systemUTC();

  @TempDir Path temp;

  @Test
  void bringsBackEverythingIntoAnEmptyFolder() throws IOException {
    Path data = temp.resolve("data");
    Path file = temp.resolve("copies").resolve("copy.zip");
    SchoolClass tuesday;
    List<Response> answered;
    try (Store store = Store.open(data, CLOCK)) {
      School school = School.over(store.ports());
      tuesday = answers(school, 3);
      answered = responses(school, tuesday);
    }

    assertThat(Backup.write(data, file)).isGreaterThan(10);
    Backup.restore(file, temp.resolve("new"), CLOCK);

    try (Store store = Store.open(temp.resolve("new"), CLOCK)) {
      assertThat(responses(School.over(store.ports()), tuesday)).isEqualTo(answered).hasSize(3);
    }
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    try (Stream<Path> left = Files.list(file.getParent())) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  void copiesOneMomentOfABusyDatabase() throws Exception {
    try (Store store = Store.open(temp.resolve("data"), CLOCK)) {
      School school = School.over(store.ports());
      SchoolClass tuesday = school.schoolClass();
      Assignment drill = school.assignment(tuesday, 200, Concept.LATERAL_SIDE);
      AtomicBoolean stop = new AtomicBoolean();
      List<Thread> busy = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        LearnerCaller learner = school.learner(tuesday, "Learner " + i);
        busy.add(
            new Thread(
                () -> {
                  for (int n = 0; n < 200 && !stop.get(); n++) {
                    school.answerRight(learner, drill, 1);
                  }
                }));
      }
      busy.forEach(Thread::start);
      for (int copy = 0; copy < 2; copy++) {
        store.backupOffice().backUp(temp.resolve("copy" + copy + ".zip"));
      }
      stop.set(true);
      for (Thread each : busy) {
        each.join();
      }
    }

    for (int copy = 0; copy < 2; copy++) {
      Path folder = temp.resolve("restored" + copy);
      Backup.restore(temp.resolve("copy" + copy + ".zip"), folder, CLOCK);
      assertThat(Orphans.in(folder)).isZero();
    }
  }

  @Test
  void writesOverNoFile() throws IOException {
    Path file = Files.writeString(temp.resolve("there.zip"), "mine");
    try (Store store = Store.open(temp.resolve("data"), CLOCK)) {
      assertThatExceptionOfType(Refused.class)
          .isThrownBy(() -> store.backupOffice().backUp(file))
          .satisfies(e -> assertThat(e.reason()).isEqualTo(Reason.COPY_REFUSED))
          .satisfies(e -> assertThat(e.details()).hasSize(1));
    }
    assertThat(problem(() -> Backup.write(temp.resolve("data"), file)))
        .isEqualTo(Problem.FILE_THERE);
    assertThat(file).hasContent("mine");
  }

  @Test
  void copiesNoDatabaseThatIsNotThere() {
    Path nowhere = temp.resolve("nowhere");

    assertThat(problem(() -> Backup.write(nowhere, temp.resolve("copy.zip"))))
        .isEqualTo(Problem.NO_DATABASE);
    assertThat(nowhere).doesNotExist();
  }

  @Test
  void restoresIntoNoFolderThatHoldsAnything() throws IOException {
    Path data = Files.createDirectory(temp.resolve("data"));
    Files.writeString(data.resolve("notes.txt"), "mine");

    assertThat(problem(() -> Backup.restore(temp.resolve("any.zip"), data, CLOCK)))
        .isEqualTo(Problem.NOT_EMPTY);
  }

  @Test
  void restoresNothingFromAFileThatIsNoCopy() throws IOException {
    Path data = temp.resolve("data");
    Path text = Files.writeString(temp.resolve("text.zip"), "no copy");

    assertThat(problem(() -> Backup.restore(text, data, CLOCK))).isEqualTo(Problem.NO_BACKUP);
    assertThat(problem(() -> Backup.restore(temp.resolve("none"), data, CLOCK)))
        .isEqualTo(Problem.NO_BACKUP);
    assertThat(data).isEmptyDirectory();
  }

  @Test
  void tellsWhoeverReadsTheFolderHowToReachTheServer() throws IOException {
    Path data = temp.resolve("data");
    URI address = URI.create("http://127.0.0.1:7070");
    try (Store store = Store.open(data, CLOCK)) {
      BackupOffice office = store.backupOffice();
      assertThat(RunningServer.of(data)).isEmpty();
      office.announce(address);

      RunningServer server = RunningServer.of(data).orElseThrow();
      assertThat(server.address()).isEqualTo(address);
      assertThat(office.admits(server.token())).isTrue();
      assertThat(office.admits("")).isFalse();
      assertThat(
              PosixFilePermissions.toString(
                  Files.getPosixFilePermissions(data.resolve("running-server"))))
          .isEqualTo("rw-------");
    }
    assertThat(RunningServer.of(data)).isEmpty();
  }

  private static Problem problem(ThrowingCallable call) {
    return catchThrowableOfType(StoreRefused.class, call).problem();
  }

  private static SchoolClass answers(School school, int count) {
    SchoolClass tuesday = school.schoolClass();
    Assignment drill = school.assignment(tuesday, count, Concept.LATERAL_SIDE);
    school.answerRight(school.learner(tuesday, "Tern"), drill, count);
    return tuesday;
  }

  private static List<Response> responses(School school, SchoolClass schoolClass) {
    return school.cases().reviewClass().responses(school.instructor(), schoolClass.id());
  }
}
