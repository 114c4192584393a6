package withy.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.item.Misconception;
import withy.core.mark.Practice;
import withy.core.measurement.LearnerSums;
import withy.core.response.Offer;
import withy.core.response.Response;
import withy.usecase.Assignment;
import withy.usecase.InstructorCaller;
import withy.usecase.School;
import withy.usecase.SchoolClass;

/**
 * An invented school with very many responses, put into the tables in bulk. Its items are true ones
 * and its sums those of its responses; everybody is right seven times of ten.
 */
public final class BigSchool implements AutoCloseable {
  private static final Instant BEGUN = Instant.parse("2026-03-02T18:00:00Z");
  private static final int LENGTH = Composition.LONGEST;
  private static final int POOL = 600;
  private static final List<Form> FORMS =
      List.of(Form.IDENTIFY, Form.SIDE, Form.CARDINAL_PASS, Form.CHANNEL_CHOICE, Form.LIGHT);

  private final Path data;
  private final Random random = new Random(20260302);
  private final List<Item> pool = new ArrayList<>();
  private final Store store;
  private final School school;
  private final InstructorCaller instructor;
  private final Connection connection;
  private int responses;

  private BigSchool(Path data) throws SQLException {
    this.data = data;
    this.store = Store.open(data, Clock.systemUTC());
    this.school = School.over(store.ports());
    this.instructor = school.instructor();
    this.connection = Database.connect(DataFolder.of(data).url());
    connection.setAutoCommit(false);
    Composition drill = new Composition(List.of(), FORMS, null, LENGTH);
    for (int i = 0; i < POOL; i++) {
      pool.add(ItemGenerator.item(Practice.IALA_A, drill, 1, i));
    }
  }

  /** A school without classes in a new data folder, which nobody else may have open. */
  public static BigSchool in(Path data) throws SQLException {
    return new BigSchool(data);
  }

  /** Responses so far. */
  public int responses() {
    return responses;
  }

  /** Adds a class whose learners all gave as many answers. */
  public SchoolClass add(String name, int learners, int answers) throws SQLException {
    SchoolClass added = school.cases().openClass().open(instructor, name, Practice.IALA_A);
    List<String> drills = new ArrayList<>();
    for (int i = 0; i < answers; i += LENGTH) {
      Assignment drill = school.assignment(added, LENGTH);
      drills.add(drill.id());
    }
    for (int i = 0; i < learners; i++) {
      String nickname = "Tern " + i;
      fill(added, school.learner(added, nickname).id(), nickname, drills, answers);
    }
    return added;
  }

  private void fill(
      SchoolClass added, String learner, String nickname, List<String> drills, int answers)
      throws SQLException {
    LearnerSums sums = LearnerSums.none(nickname);
    try (PreparedStatement issue = connection.prepareStatement(ISSUE);
        PreparedStatement response = connection.prepareStatement(RESPONSE)) {
      for (int i = 0; i < answers; i++) {
        Item item = pool.get(random.nextInt(POOL));
        Response answered = response(item, nickname, drills.get(i / LENGTH), i);
        issue(issue, answered, learner, item, i % LENGTH);
        respond(response, answered, learner, added);
        sums = sums.plus(answered);
      }
      issue.executeBatch();
      response.executeBatch();
    }
    try (PreparedStatement update = connection.prepareStatement(SUMS)) {
      update.setInt(1, answers);
      update.setObject(2, moment(sums.last()));
      update.setString(3, SumsText.of(sums));
      update.setString(4, learner);
      update.executeUpdate();
    }
    connection.commit();
    responses += answers;
  }

  private static final String ISSUE =
      """
      INSERT INTO issued_item (id, learner, assignment, position, practice, concept, seed,
        item_index, generator_version, choices, issued_at)
      VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, '', ?)
      """;
  private static final String RESPONSE =
      """
      INSERT INTO response (item, learner, client_id, school_class, assignment, form, practice,
        concepts, answer_key, chosen, misconception, offered, correct, shown_ms, answered_at, rapid)
      VALUES (?, ?, RANDOM_UUID(), ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, FALSE)
      """;
  private static final String SUMS =
      "UPDATE learner_sums SET answers = ?, last_answered = ?, sums = ? WHERE learner = ?";

  private Response response(Item item, String nickname, String drill, int number) {
    boolean right = random.nextInt(10) < 7;
    String chosen =
        right ? item.key() : item.options().get(random.nextInt(item.options().size())).value();
    Misconception belief = item.answer().grade(chosen).misconception();
    return new Response(
        nickname,
        drill,
        "%016x%016x".formatted(random.nextLong(), random.nextLong()),
        item.form().id(),
        Practice.IALA_A.id(),
        item.concepts().stream().map(each -> each.id()).toList(),
        item.key(),
        chosen,
        belief == null ? null : belief.id(),
        Offer.of(item, chosen),
        chosen.equals(item.key()),
        2_000 + random.nextInt(8_000),
        BEGUN.plusSeconds(60L * number + random.nextInt(60)));
  }

  private static void issue(
      PreparedStatement into, Response answered, String learner, Item item, int position)
      throws SQLException {
    into.setString(1, answered.item());
    into.setString(2, learner);
    into.setString(3, answered.assignment());
    into.setInt(4, position);
    into.setString(5, answered.practice());
    into.setString(6, answered.measured());
    into.setLong(7, item.seed());
    into.setInt(8, item.index());
    into.setInt(9, ItemGenerator.VERSION);
    into.setObject(10, moment(answered.answeredAt()));
    into.addBatch();
  }

  private static void respond(
      PreparedStatement into, Response answered, String learner, SchoolClass added)
      throws SQLException {
    into.setString(1, answered.item());
    into.setString(2, learner);
    into.setString(3, added.id());
    into.setString(4, answered.assignment());
    into.setString(5, answered.form());
    into.setString(6, answered.practice());
    into.setString(7, Words.of(answered.concepts()));
    into.setString(8, answered.key());
    into.setString(9, answered.option());
    into.setString(10, answered.misconception());
    into.setString(11, Words.ofOffered(answered.offered()));
    into.setBoolean(12, answered.correct());
    into.setLong(13, answered.shownMillis());
    into.setObject(14, moment(answered.answeredAt()));
    into.addBatch();
  }

  private static @Nullable OffsetDateTime moment(@Nullable Instant instant) {
    return instant == null ? null : instant.atOffset(ZoneOffset.UTC);
  }

  /** How the database goes about a query of this school. */
  public String plan(String query) throws SQLException {
    try (Statement statement = connection.createStatement();
        var rows = statement.executeQuery("EXPLAIN " + query)) {
      rows.next();
      return rows.getString(1);
    }
  }

  /** Writes all out, so that a server can open the folder. */
  @Override
  public void close() throws SQLException {
    connection.close();
    store.close();
  }

  @Override
  public String toString() {
    return responses + " responses in " + data;
  }
}
