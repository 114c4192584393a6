package withy.store;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.usecase.Behind;
import withy.usecase.Evidence;
import withy.usecase.StoredResponse;

/** Finds the responses behind a figure. */
final class EvidenceTable implements Evidence {
  /** The first answers of the learners of a class, one look into an index for each of them. */
  private static final String FIRST =
      """
       AND r.item IN (
        SELECT (SELECT f.item FROM response f WHERE f.learner = c.id AND f.measured = :concept
          ORDER BY f.learner, f.measured, f.answered_at, f.item LIMIT 1)
        FROM learner c WHERE c.school_class = :class)
      """;

  private static final String LED =
      """
      SELECT r.item, r.learner, r.form, r.answer_key, i.seed, i.item_index FROM (
        SELECT item, learner, form, answer_key, answered_at FROM response
        WHERE school_class = :class AND misconception = :misconception AND measured = :concept
        ORDER BY school_class DESC, misconception DESC, answered_at DESC, item DESC
        LIMIT :most) r
      JOIN issued_item i ON i.id = r.item ORDER BY r.answered_at DESC, r.item DESC
      """;

  /** One look into the index of kinds for each that there can be. */
  static final String KINDS =
      "SELECT c.word AS concept, f.word AS form FROM "
          + words(Concept.values())
          + " c(word, place), "
          + words(Form.values())
          + """
               f(word, place) WHERE EXISTS (SELECT 1 FROM response r
                WHERE r.school_class = :class AND r.measured = c.word AND r.form = f.word)
              ORDER BY c.place, f.place
              """;

  /**
   * A place in the order of an index, also where there is none: the engine has an index of one
   * column for each reference, and takes that one and sorts all it finds unless a moment narrows
   * the wider one.
   */
  private static final String OLDER =
      " AND r.answered_at <= :at AND (r.answered_at < :at OR r.item < :last)";

  /** Later than any answer. */
  private static final Instant LATEST = Instant.parse("9999-01-01T00:00:00Z");

  private final Access access;

  EvidenceTable(Access access) {
    this.access = access;
  }

  @Override
  public long count(Behind which) {
    Map<String, Object> bound = new LinkedHashMap<>();
    String where = where(which, bound);
    return access.read(
        handle ->
            handle
                .createQuery("SELECT COUNT(*) FROM response r" + where)
                .bindMap(bound)
                .mapTo(Long.class)
                .one());
  }

  /** The index of a class, walked from its end, and no further than one page. */
  @Override
  public List<Marked> latest(String schoolClass, @Nullable Place before, int most) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                        SELECT l.nickname, r.measured, r.correct, r.answered_at, r.item FROM (
                          SELECT learner, measured, correct, answered_at, item FROM response
                          WHERE school_class = :class AND answered_at <= :at
                          AND (answered_at < :at OR item < :last)
                          ORDER BY school_class DESC, answered_at DESC, item DESC
                          LIMIT :most) r
                        JOIN learner l ON l.id = r.learner
                        ORDER BY r.answered_at DESC, r.item DESC
                        """)
                .bind("class", schoolClass)
                .bindMap(place(before, new LinkedHashMap<>()))
                .bind("most", most)
                .map(
                    (row, context) ->
                        new Marked(
                            row.getString("nickname"),
                            row.getString("measured"),
                            row.getBoolean("correct"),
                            new Place(Moments.read(row, "answered_at"), row.getString("item"))))
                .list());
  }

  @Override
  public List<StoredResponse> newest(Behind which, @Nullable Place before, int most) {
    Map<String, Object> bound = new LinkedHashMap<>();
    String query = newest(which, before, bound);
    bound.put("most", most);
    return access.read(
        handle -> handle.createQuery(query).bindMap(bound).map(ResponseRow::read).list());
  }

  @Override
  public List<Led> led(String schoolClass, String concept, String misconception, int most) {
    return access.read(
        handle ->
            handle
                .createQuery(LED)
                .bind("class", schoolClass)
                .bind("concept", concept)
                .bind("misconception", misconception)
                .bind("most", most)
                .map(
                    (row, context) ->
                        new Led(
                            row.getString("item"),
                            row.getString("learner"),
                            row.getString("form"),
                            row.getString("answer_key"),
                            row.getLong("seed"),
                            row.getInt("item_index")))
                .list());
  }

  @Override
  public List<Kind> kinds(String schoolClass) {
    return access.read(
        handle ->
            handle
                .createQuery(KINDS)
                .bind("class", schoolClass)
                .map(
                    (row, context) ->
                        new Kind(
                            Term.parse(Concept.class, row.getString("concept")),
                            Term.parse(Form.class, row.getString("form"))))
                .list());
  }

  /** Terms and their places as rows; no word of ours needs quoting. */
  private static String words(Term[] terms) {
    return IntStream.range(0, terms.length)
        .mapToObj(place -> "('" + terms[place].id() + "', " + place + ")")
        .collect(Collectors.joining(", ", "(VALUES ", ")"));
  }

  /** The query of {@link #newest}, also for those who look at how the engine goes about it. */
  static String newest(Behind which, @Nullable Place before, Map<String, Object> bound) {
    String where = where(which, bound);
    place(before, bound);
    return ResponseRow.SELECT
        + where
        + OLDER
        + " ORDER BY "
        + pinned(which)
        + "r.answered_at DESC, r.item DESC LIMIT :most";
  }

  private static Map<String, Object> place(@Nullable Place before, Map<String, Object> bound) {
    bound.put("at", before == null ? LATEST : before.answeredAt());
    bound.put("last", before == null ? "" : before.item());
    return bound;
  }

  /**
   * The columns of an index that a condition pins to one value. The engine walks an index in its
   * order only where it is ordered by from its first column on; else it sorts all that is found.
   */
  private static String pinned(Behind which) {
    if (which.learner() != null) {
      return which.concept() == null ? "" : "r.learner DESC, r.measured DESC, ";
    }
    if (which.assignment() != null) {
      return "r.assignment DESC, ";
    }
    if (which.form() != null && which.key() != null && which.option() != null) {
      return "r.school_class DESC, r.form DESC, r.answer_key DESC, r.chosen DESC, ";
    }
    if (which.misconception() != null) {
      return "r.school_class DESC, r.misconception DESC, ";
    }
    if (which.concept() == null) {
      return "r.school_class DESC, ";
    }
    String concept = "r.school_class DESC, r.measured DESC, ";
    return which.form() == null ? concept : concept + "r.form DESC, ";
  }

  private static String where(Behind which, Map<String, Object> bound) {
    StringBuilder where = new StringBuilder(" WHERE r.school_class = :class");
    bound.put("class", which.schoolClass());
    equal(where, bound, "learner", which.learner());
    equal(where, bound, "assignment", which.assignment());
    equal(where, bound, "measured", which.concept());
    equal(where, bound, "form", which.form());
    equal(where, bound, "answer_key", which.key());
    equal(where, bound, "chosen", which.option());
    equal(where, bound, "misconception", which.misconception());
    compared(where, bound, "answered_at >= :since", which.since());
    compared(where, bound, "answered_at < :until", which.until());
    switch (which.which()) {
      case ALL -> {}
      case RIGHT -> where.append(" AND r.correct");
      case WRONG -> where.append(" AND NOT r.correct");
      case UNSURE -> where.append(" AND r.chosen IS NULL");
      case RAPID -> where.append(" AND r.rapid");
      case FIRST -> first(where, bound, which.concept());
    }
    return where.toString();
  }

  private static void equal(
      StringBuilder where, Map<String, Object> bound, String column, @Nullable String value) {
    if (value != null) {
      where.append(" AND r.").append(column).append(" = :").append(column);
      bound.put(column, value);
    }
  }

  /** A moment is bound under the word that ends the condition. */
  private static void compared(
      StringBuilder where, Map<String, Object> bound, String condition, @Nullable Instant moment) {
    if (moment != null) {
      where.append(" AND r.").append(condition);
      bound.put(condition.substring(condition.indexOf(':') + 1), moment);
    }
  }

  private static void first(
      StringBuilder where, Map<String, Object> bound, @Nullable String concept) {
    if (concept == null) {
      throw new IllegalArgumentException("the first answers are those on a concept");
    }
    where.append(FIRST);
    bound.put("concept", concept);
  }
}
