package withy.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Misconception;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;
import withy.core.scenario.TimeOfDay;
import withy.usecase.DemoPlan;

/** Reads the demonstration class as it is authored. */
public final class DemoClassReader {
  private static final String FILE = "/scenarios/demo-class.json";

  private DemoClassReader() {}

  /** The class that is packed with the program. */
  public static DemoPlan read() {
    ObjectMapper json = JsonMapper.builder().build();
    try (InputStream in =
        Objects.requireNonNull(DemoClassReader.class.getResourceAsStream(FILE), FILE)) {
      return plan(json.readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static DemoPlan plan(JsonNode root) {
    return new DemoPlan(
        root.required("name").asText(),
        Practice.parse(root.required("practice").asText()),
        list(root.required("learners"), DemoClassReader::learner),
        list(root.required("assignments"), DemoClassReader::assignment));
  }

  private static DemoPlan.Member learner(JsonNode node) {
    return new DemoPlan.Member(
        node.required("nickname").asText(),
        list(node.required("beliefs"), each -> Term.parse(Misconception.class, each.asText())),
        mended(node.get("mended")),
        node.required("slip").asDouble(),
        node.required("secondsPerItem").asInt(),
        list(node.required("answered"), JsonNode::asInt));
  }

  private static DemoPlan.Drill assignment(JsonNode node) {
    Composition composition =
        new Composition(
            list(node.required("concepts"), each -> Term.parse(Concept.class, each.asText())),
            list(node.required("forms"), each -> Term.parse(Form.class, each.asText())),
            time(node.get("time")),
            node.required("length").asInt(),
            water(node.get("water")));
    return new DemoPlan.Drill(
        node.required("title").asText(),
        kind(node.get("kind")),
        composition,
        node.required("assignedDaysAgo").asInt(),
        node.required("dueInDays").asInt());
  }

  /** Drills are counted from 1 where people write. */
  private static SortedMap<Misconception, Integer> mended(@Nullable JsonNode node) {
    SortedMap<Misconception, Integer> mended = new TreeMap<>();
    if (node != null) {
      node.fields()
          .forEachRemaining(
              each ->
                  mended.put(
                      Term.parse(Misconception.class, each.getKey()), each.getValue().asInt() - 1));
    }
    return mended;
  }

  private static DrillKind kind(@Nullable JsonNode node) {
    return node == null ? DrillKind.ADAPTIVE : Term.parse(DrillKind.class, node.asText());
  }

  private static @Nullable SurveyedWater water(@Nullable JsonNode node) {
    return node == null ? null : AuthoredWaters.find(node.asText()).orElseThrow();
  }

  private static @Nullable TimeOfDay time(@Nullable JsonNode node) {
    return node == null || node.isNull() ? null : Term.parse(TimeOfDay.class, node.asText());
  }

  private static <T> List<T> list(JsonNode array, Function<JsonNode, T> read) {
    return StreamSupport.stream(array.spliterator(), false).map(read).toList();
  }
}
