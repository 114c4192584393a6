package withy.catalogue;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.response.DrillSet;
import withy.core.scenario.TimeOfDay;

/**
 * Reads a drill set: {@code {"title": "...", "concepts": [...], "forms": [...], "time": "day",
 * "length": 10, "water": "home-water"}}, of which only the title and the length must be there. No
 * concepts, no forms or no time mean all of them; a time of {@code both} is as good as none. The
 * water is one that comes with the program, in which all items then lie; without it waters are
 * generated.
 */
public final class DrillSetReader {
  private static final List<String> FIELDS =
      List.of("title", "concepts", "forms", "time", "length", "water");
  private static final ObjectMapper JSON =
      new ObjectMapper()
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private final String file;
  private final List<String> problems = new ArrayList<>();

  private DrillSetReader(String file) {
    this.file = file;
  }

  /**
   * The drill set that a text holds.
   *
   * @param file what the text is called where a problem is told
   * @throws InvalidDrillSet if it is no JSON, or a field is missing, unknown or unfit; all that is
   *     wrong is told at once, each with its place, as {@code forms[1]}
   */
  public static DrillSet read(String file, String text) {
    return new DrillSetReader(file).drillSet(text);
  }

  private DrillSet drillSet(String text) {
    JsonNode root = parsed(text);
    unknownFields(root);
    String title = title(root.path("title"));
    List<Concept> concepts = terms(root, "concepts", Concept.class);
    List<Form> forms = terms(root, "forms", Form.class);
    TimeOfDay time = time(root.path("time"));
    int length = length(root.path("length"));
    SurveyedWater water = water(root.path("water"));
    if (!problems.isEmpty()) {
      throw new InvalidDrillSet(file, problems);
    }
    return new DrillSet(title, new Composition(concepts, forms, time, length, water));
  }

  private JsonNode parsed(String text) {
    try {
      JsonNode root = JSON.readTree(text);
      if (root.isObject()) {
        return root;
      }
    } catch (JsonProcessingException e) {
      throw new InvalidDrillSet(file, List.of("no JSON: " + place(e)));
    }
    throw new InvalidDrillSet(file, List.of("a drill set is a JSON object"));
  }

  private static String place(JsonProcessingException e) {
    String what = e.getOriginalMessage().lines().findFirst().orElse("");
    return e.getLocation() == null
        ? what
        : "line %d, column %d: %s"
            .formatted(e.getLocation().getLineNr(), e.getLocation().getColumnNr(), what);
  }

  private void unknownFields(JsonNode root) {
    for (Iterator<String> names = root.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!FIELDS.contains(name)) {
        problem(name, "is no field of a drill set; those are " + String.join(", ", FIELDS));
      }
    }
  }

  private String title(JsonNode node) {
    if (!node.isTextual() || node.asText().isBlank()) {
      problem("title", "must be a text that is not empty");
    }
    return node.asText();
  }

  private <E extends Enum<E> & Term> List<E> terms(JsonNode root, String field, Class<E> type) {
    List<E> terms = new ArrayList<>();
    JsonNode list = root.path(field);
    if (!list.isMissingNode() && !list.isArray()) {
      problem(field, "must be a list of words");
      return terms;
    }
    for (int i = 0; i < list.size(); i++) {
      add(field + "[" + i + "]", list.path(i), type, terms);
    }
    return terms;
  }

  private <E extends Enum<E> & Term> void add(
      String path, JsonNode node, Class<E> type, List<E> terms) {
    try {
      E term = Term.parse(type, node.isTextual() ? node.asText() : node.toString());
      if (terms.contains(term)) {
        problem(path, "'" + term.id() + "' stands there twice");
      }
      terms.add(term);
    } catch (IllegalArgumentException e) {
      problem(path, String.valueOf(e.getMessage()));
    }
  }

  private @Nullable TimeOfDay time(JsonNode node) {
    if (node.isMissingNode() || node.isNull() || node.asText().equals("both")) {
      return null;
    }
    try {
      return Term.parse(TimeOfDay.class, node.asText());
    } catch (IllegalArgumentException e) {
      problem("time", e.getMessage() + ", both");
      return null;
    }
  }

  private int length(JsonNode node) {
    boolean fits = node.isInt() && node.asInt() >= 1 && node.asInt() <= Composition.LONGEST;
    if (!fits) {
      problem("length", "must be a whole number from 1 to " + Composition.LONGEST);
    }
    return fits ? node.asInt() : 1;
  }

  private @Nullable SurveyedWater water(JsonNode node) {
    if (node.isMissingNode() || node.isNull()) {
      return null;
    }
    Optional<SurveyedWater> water = AuthoredWaters.find(node.asText());
    if (water.isEmpty()) {
      problem("water", "'" + node.asText() + "' is no water that comes with the program");
    }
    return water.orElse(null);
  }

  private void problem(String path, String what) {
    problems.add(path + ": " + what);
  }
}
