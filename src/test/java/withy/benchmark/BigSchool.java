package withy.benchmark;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import withy.core.Chance;
import withy.core.item.Composition;
import withy.core.mark.Practice;
import withy.usecase.Assignment;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.School;
import withy.usecase.SchoolClass;

/**
 * An invented school with many responses: a few hundred real answers of each of some learners, and
 * copies of them by the database itself, since a million answers one by one would take an hour.
 */
public final class BigSchool {
  private static final int REAL = 20;

  private static final String COPIED_ITEMS =
      """
      INSERT INTO issued_item
      SELECT CONCAT(LPAD(CAST(x AS VARCHAR), 6, 'c'), SUBSTRING(id, 7)), learner, assignment,
        position + 1000 * x, practice, concept, seed, item_index, generator_version, choices,
        issued_at
      FROM issued_item CROSS JOIN SYSTEM_RANGE(1, ?)
      WHERE learner = ? AND ? * x + position < ?
      """;

  private static final String COPIED_RESPONSES =
      """
      INSERT INTO response (item, learner, client_id, school_class, assignment, form, practice,
        concepts, answer_key, chosen, misconception, offered, correct, shown_ms, answered_at, rapid)
      SELECT CONCAT(LPAD(CAST(x AS VARCHAR), 6, 'c'), SUBSTRING(r.item, 7)), r.learner,
        RANDOM_UUID(), r.school_class, r.assignment, r.form, r.practice, r.concepts, r.answer_key,
        r.chosen, r.misconception, r.offered, r.correct, r.shown_ms,
        DATEADD('SECOND', 7200 * x, r.answered_at), r.rapid
      FROM response r JOIN issued_item i ON i.id = r.item CROSS JOIN SYSTEM_RANGE(1, ?)
      WHERE r.learner = ? AND ? * x + i.position < ?
      """;

  private final School school;
  private final List<SchoolClass> classes = new ArrayList<>();

  private BigSchool(School school) {
    this.school = school;
  }

  public static BigSchool over(School school) {
    return new BigSchool(school);
  }

  public List<SchoolClass> classes() {
    return classes;
  }

  /** A class whose learners have each answered so much. */
  public SchoolClass addClass(String url, int learners, int answers) throws SQLException {
    SchoolClass made =
        school
            .cases()
            .openClass()
            .open(school.instructor(), "Class " + classes.size(), Practice.IALA_A);
    classes.add(made);
    Composition all = new Composition(List.of(), List.of(), null, Composition.LONGEST);
    Assignment drill =
        school.cases().assignDrill().assign(school.instructor(), made.id(), "All", all, null);
    for (int learner = 0; learner < learners; learner++) {
      LearnerCaller caller = school.learner(made, "Learner " + learner);
      int real = Math.min(answers, REAL);
      answer(caller, drill, real, learner);
      copy(url, caller.id(), real, answers);
    }
    return made;
  }

  private void answer(LearnerCaller learner, Assignment drill, int count, int seed) {
    Chance chance = Chance.of(seed, count);
    for (int i = 0; i < count; i++) {
      school.clock().pass(Duration.ofSeconds(30));
      IssuedItem item = school.next(learner, drill);
      boolean right = item.options().isEmpty() || chance.below(10) < 7;
      String word =
          right
              ? item.item().key()
              : item.options().get(chance.below(item.options().size())).option().value();
      school.answer(learner, item, word);
    }
  }

  /** The learner's responses again and again, each under ids and at a moment of its own. */
  private static void copy(String url, String learner, int from, int to) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url, "sa", "")) {
      copy(connection, COPIED_ITEMS, learner, from, to);
      copy(connection, COPIED_RESPONSES, learner, from, to);
      try (PreparedStatement stale =
          connection.prepareStatement("UPDATE learner_sums SET format = 0 WHERE learner = ?")) {
        stale.setString(1, learner);
        stale.executeUpdate();
      }
    }
  }

  private static void copy(Connection connection, String sql, String learner, int from, int to)
      throws SQLException {
    try (PreparedStatement insert = connection.prepareStatement(sql)) {
      insert.setInt(1, to / from);
      insert.setString(2, learner);
      insert.setInt(3, from);
      insert.setInt(4, to);
      insert.executeUpdate();
    }
  }

  /** Half of so many calls take longer; the first, which warms up, is not counted. */
  public static double medianMillis(int calls, Runnable call) {
    call.run();
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < calls; i++) {
      long start = System.nanoTime();
      call.run();
      millis.add((System.nanoTime() - start) / 1e6);
    }
    Collections.sort(millis);
    return millis.get(calls / 2);
  }
}
