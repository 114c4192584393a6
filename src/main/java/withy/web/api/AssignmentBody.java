package withy.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;
import withy.core.response.DrillSet;
import withy.core.scenario.TimeOfDay;
import withy.usecase.AssignDrill;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.web.Declined;
import withy.web.Fault;
import withy.web.SentMoment;

/** A drill to be assigned, as it is sent. */
record AssignmentBody(
    String schoolClass,
    @Nullable String title,
    Composition composition,
    @Nullable Instant due,
    AssignDrill.Wanted wanted) {
  private static final String BOTH = "both";

  static AssignmentBody read(
      Body body,
      Function<String, Optional<DrillSet>> drillSets,
      Function<String, SurveyedWater> waters) {
    String schoolClass = body.text("class");
    String title = body.optionalText("title");
    Instant due = moment(body, "due");
    AssignDrill.Wanted wanted = wanted(body);
    DrillSet set = body.has("drillSet") ? drillSet(body.text("drillSet"), drillSets) : null;
    Composition composition = set == null ? composition(body, waters) : set.composition();
    body.requireNothingElse();
    String named = title == null && set != null ? set.title() : title;
    return new AssignmentBody(schoolClass, named, composition, due, wanted);
  }

  /** RFC 3339: a moment with the offset of its clock. */
  private static @Nullable Instant moment(Body body, String field) {
    String text = body.optionalText(field);
    try {
      return text == null ? null : SentMoment.of(text);
    } catch (DateTimeException malformed) {
      return body.malformed(field);
    }
  }

  private static AssignDrill.Wanted wanted(Body body) {
    DrillKind kind = kind(body);
    List<String> learners = body.has("learners") ? Terms.words(body, "learners") : List.of();
    return new AssignDrill.Wanted(kind, moment(body, "opens"), learners, seed(body));
  }

  static DrillKind kind(Body body) {
    DrillKind named = Terms.optional(List.of(DrillKind.values()), body, "kind");
    return named == null ? DrillKind.ADAPTIVE : named;
  }

  /** As text, since not every script keeps a whole number of this size. */
  static @Nullable Long seed(Body body) {
    String text = body.optionalText("seed");
    try {
      return text == null ? null : Long.parseLong(text);
    } catch (NumberFormatException malformed) {
      return body.malformed("seed");
    }
  }

  private static DrillSet drillSet(String id, Function<String, Optional<DrillSet>> drillSets) {
    return drillSets.apply(id).orElseThrow(() -> new Refused(Reason.UNKNOWN_DRILL_SET));
  }

  static Composition composition(Body body, Function<String, SurveyedWater> waters) {
    Body composition = body.object("composition");
    List<Concept> concepts = Terms.list(Concept.class, composition, "concepts");
    List<Form> forms = Terms.list(Form.class, composition, "forms");
    TimeOfDay time = time(composition);
    int length = length(composition);
    String water = composition.optionalText("water");
    Practice practice = Terms.optional(Practice.values(), composition, "practice");
    Difficulty difficulty = Terms.optional(List.of(Difficulty.values()), composition, "difficulty");
    composition.requireNothingElse();
    SurveyedWater in = water == null ? null : waters.apply(water);
    return new Composition(concepts, forms, time, length, in, practice, difficulty);
  }

  private static @Nullable TimeOfDay time(Body composition) {
    JsonNode time = composition.optional("time");
    boolean both = time == null || BOTH.equals(time.textValue());
    return both ? null : Terms.one(List.of(TimeOfDay.values()), composition, "time");
  }

  private static int length(Body composition) {
    long length = composition.wholeNumber("length");
    if (length < 1 || length > Composition.LONGEST) {
      throw Declined.field(Fault.MALFORMED_FIELD, "composition.length");
    }
    return (int) length;
  }
}
