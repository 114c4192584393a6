package withy.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import withy.usecase.AnswerItem;
import withy.usecase.Assignment;
import withy.usecase.Given;
import withy.usecase.IssuedItem;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.UseCases;
import withy.web.Json;
import withy.web.Limits;
import withy.web.Metrics;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;

/** What a learner does: sees what there is to do, takes an item, answers it. */
final class DrillApi implements RouteGroup {
  private static final Pattern UUID_TEXT =
      Pattern.compile("\\p{XDigit}{8}(-\\p{XDigit}{4}){3}-\\p{XDigit}{12}");

  private final UseCases useCases;
  private final ItemJson items;
  private final Limits limits;
  private final Metrics metrics;

  DrillApi(UseCases useCases, ItemJson items, Limits limits, Metrics metrics) {
    this.useCases = useCases;
    this.items = items;
    this.limits = limits;
    this.metrics = metrics;
  }

  private record AssignmentJson(
      String id,
      String title,
      @Nullable String due,
      int answered,
      int length,
      String kind,
      @Nullable String opens) {
    static AssignmentJson of(OwnAssignment own) {
      return new AssignmentJson(
          own.id(),
          own.title(),
          own.due() == null ? null : own.due().toString(),
          own.answered(),
          own.length(),
          own.kind().id(),
          own.opensAt() == null ? null : own.opensAt().toString());
    }
  }

  @Override
  public List<Route> routes() {
    return List.of(
        Route.get("/api/assignments", Role.LEARNER, this::assignments),
        Route.get("/api/assignments/{id}/next", Role.LEARNER, this::next),
        Route.post("/api/readiness", Role.LEARNER, this::readiness),
        Route.post("/api/responses", Role.LEARNER, this::respond));
  }

  private void assignments(Visit visit) {
    List<OwnAssignment> own = useCases.listAssignments().of(visit.learner());
    Json.answer(visit.context(), 200, own.stream().map(AssignmentJson::of).toList());
  }

  private void next(Visit visit) {
    String assignment = visit.context().pathParam("id");
    Optional<IssuedItem> next = useCases.nextItem().next(visit.learner(), assignment);
    if (next.isPresent()) {
      Json.answer(visit.context(), 200, items.shown(next.get()));
    } else {
      visit.context().status(204);
    }
  }

  private void readiness(Visit visit) {
    Assignment started = useCases.startReadiness().start(visit.learner(), "");
    Json.answer(visit.context(), 201, Map.of("id", started.id()));
  }

  private void respond(Visit visit) {
    limits.response(visit.learner().id());
    Body body = Body.of(visit.context());
    UUID id = id(body);
    String item = body.text("item");
    Given option = given(body);
    long shownMillis = body.wholeNumber("shownMs");
    body.requireNothingElse();
    AnswerItem.Answered answered =
        useCases.answerItem().answer(visit.learner(), id, item, option, shownMillis);
    if (!answered.repeated()) {
      metrics.count("answers");
    }
    int status = answered.repeated() ? 200 : 201;
    Json.answer(visit.context(), status, items.feedback(answered.feedback()));
  }

  /** A word, a number, or a word for each part; null for "not sure". */
  private static @Nullable Given given(Body body) {
    JsonNode option = body.required("option");
    if (option.isNull()) {
      return null;
    }
    if (option.isTextual() || option.isNumber()) {
      return new Given.Text(option.asText());
    }
    return option.isObject() ? parts(body) : body.malformed("option");
  }

  private static Given parts(Body body) {
    Map<String, String> tokens = new LinkedHashMap<>();
    Body parts = body.object("option");
    for (String slot : parts.fields()) {
      tokens.put(slot, parts.text(slot));
    }
    return new Given.Parts(tokens);
  }

  private static UUID id(Body body) {
    String text = body.text("id");
    return UUID_TEXT.matcher(text).matches() ? UUID.fromString(text) : body.malformed("id");
  }
}
