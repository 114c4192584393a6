package withy.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.mark.Practice;
import withy.core.response.DrillSet;
import withy.core.scenario.TimeOfDay;
import withy.usecase.DrillSetFiles;
import withy.usecase.DrillSetProblem;
import withy.usecase.UnfitWater;

/**
 * Reads a drill set: {@code {"title": "...", "concepts": [...], "forms": [...], "time": "day",
 * "length": 10, "water": "home-water", "practice": "usa", "difficulty": "harder"}}, of which only
 * the title and the length must be there. No concepts, forms, time or difficulty mean all of them,
 * no practice that of the class; a time of {@code both} is as good as none. In the water all items
 * lie; it is the id of one that comes with the program, or the file of another as {@link
 * WaterReader} reads it. Without it waters are generated.
 */
public final class DrillSetReader {
  static final List<String> FIELDS =
      List.of("title", "concepts", "forms", "time", "length", "water", "practice", "difficulty");

  /** The id of a water that lies in the file, until it is given one. */
  private static final String HERE = "here";

  private final String file;
  private final List<DrillSetProblem> problems = new ArrayList<>();
  private @Nullable String waterFile;

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
    return readWhole(file, text).set();
  }

  /** As {@link #read}, with the file of a water that lies in that of the set. */
  static DrillSetFiles.Read readWhole(String file, String text) {
    DrillSetReader reader = new DrillSetReader(file);
    DrillSet set = reader.drillSet(text);
    return new DrillSetFiles.Read(set, reader.waterFile);
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
    Practice practice = optional("practice", root, Practice.values());
    Difficulty difficulty = optional("difficulty", root, List.of(Difficulty.values()));
    if (!problems.isEmpty()) {
      throw new InvalidDrillSet(file, problems);
    }
    return new DrillSet(
        title, new Composition(concepts, forms, time, length, water, practice, difficulty));
  }

  private JsonNode parsed(String text) {
    try {
      JsonNode root = ExactJson.read(text);
      if (root.isObject()) {
        return root;
      }
      problem("", "no-object");
    } catch (JsonProcessingException e) {
      problem("", "no-json", line(e), column(e), what(e));
    }
    throw new InvalidDrillSet(file, problems);
  }

  private static String what(JsonProcessingException e) {
    return e.getOriginalMessage().lines().findFirst().orElse("");
  }

  private static int line(JsonProcessingException e) {
    return e.getLocation() == null ? 1 : e.getLocation().getLineNr();
  }

  private static int column(JsonProcessingException e) {
    return e.getLocation() == null ? 1 : e.getLocation().getColumnNr();
  }

  private void unknownFields(JsonNode root) {
    for (Iterator<String> names = root.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!FIELDS.contains(name)) {
        problem(name, "no-field", String.join(", ", FIELDS));
      }
    }
  }

  private String title(JsonNode node) {
    if (!node.isTextual() || node.asText().isBlank()) {
      problem("title", "no-title");
    }
    return node.asText();
  }

  private <E extends Enum<E> & Term> List<E> terms(JsonNode root, String field, Class<E> type) {
    List<E> terms = new ArrayList<>();
    JsonNode list = root.path(field);
    if (!list.isMissingNode() && !list.isArray()) {
      problem(field, "no-list");
      return terms;
    }
    for (int i = 0; i < list.size(); i++) {
      add(field + "[" + i + "]", list.path(i), type, terms);
    }
    return terms;
  }

  private <E extends Enum<E> & Term> void add(
      String path, JsonNode node, Class<E> type, List<E> terms) {
    E term = term(path, node, List.of(type.getEnumConstants()), "");
    if (term == null) {
      return;
    }
    if (terms.contains(term)) {
      problem(path, "twice", term.id());
    }
    terms.add(term);
  }

  /** The term of a word; null where it is none, which is noted. */
  private <E extends Term> @Nullable E term(
      String path, JsonNode node, List<E> known, String more) {
    String word = node.isTextual() ? node.asText() : node.toString();
    for (E each : known) {
      if (each.id().equals(word)) {
        return each;
      }
    }
    problem(
        path,
        "none-of",
        word,
        known.stream().map(Term::id).collect(Collectors.joining(", ")) + more);
    return null;
  }

  private @Nullable TimeOfDay time(JsonNode node) {
    boolean both = node.isMissingNode() || node.isNull() || node.asText().equals("both");
    return both ? null : term("time", node, List.of(TimeOfDay.values()), ", both");
  }

  private <E extends Term> @Nullable E optional(String field, JsonNode root, List<E> known) {
    JsonNode node = root.path(field);
    return node.isMissingNode() || node.isNull() ? null : term(field, node, known, "");
  }

  private int length(JsonNode node) {
    boolean fits = node.isInt() && node.asInt() >= 1 && node.asInt() <= Composition.LONGEST;
    if (!fits) {
      problem("length", "length", Composition.LONGEST);
    }
    return fits ? node.asInt() : 1;
  }

  private @Nullable SurveyedWater water(JsonNode node) {
    if (node.isMissingNode() || node.isNull()) {
      return null;
    }
    if (node.isObject()) {
      return here(node);
    }
    Optional<SurveyedWater> water = AuthoredWaters.find(node.asText());
    if (water.isEmpty()) {
      problem("water", "no-water", node.asText());
    }
    return water.orElse(null);
  }

  /** A water whose file lies in that of the set. */
  private @Nullable SurveyedWater here(JsonNode node) {
    String text = ExactJson.write(node);
    try {
      SurveyedWater water = new WaterReader().read(HERE, null, text).water();
      waterFile = DrillSetWriter.file(water.title(), text);
      return water;
    } catch (UnfitWater e) {
      e.problems().forEach(each -> problems.add(DrillSetProblem.of(each)));
      return null;
    }
  }

  private void problem(String path, String key, Object... arguments) {
    problems.add(new DrillSetProblem(path, "drill-set.problem." + key, List.of(arguments)));
  }
}
