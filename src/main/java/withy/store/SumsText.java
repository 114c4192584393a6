package withy.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.FormSums;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.MarkPair;
import withy.core.measurement.PairSums;
import withy.core.measurement.StateSums;

/**
 * Sums as the text in which they are kept: JSON, every number to its last digit. Whoever changes
 * what is written, or what it means, gives it another {@link #FORMAT}: rows of any other are
 * counted anew.
 */
final class SumsText {
  static final int FORMAT = 2;

  private static final ObjectMapper JSON = new ObjectMapper();

  private SumsText() {}

  static String of(LearnerSums sums) {
    ObjectNode text = JSON.createObjectNode();
    text.put("answers", sums.answers()).put("right", sums.right()).put("rapid", sums.rapid());
    text.put("last", word(sums.last()));
    ObjectNode concepts = text.putObject("concepts");
    sums.concepts().forEach((name, each) -> write(concepts.putObject(name), each));
    ObjectNode forms = text.putObject("forms");
    sums.forms()
        .forEach(
            (name, each) ->
                forms.putArray(name).add(each.answers()).add(each.right()).add(each.shownMillis()));
    ObjectNode pairs = text.putObject("pairs");
    sums.pairs()
        .forEach(
            (pair, each) ->
                pairs
                    .putArray(pair.shown() + " " + pair.answered())
                    .add(each.offered())
                    .add(each.times())
                    .add(each.right())
                    .add(each.slips()));
    return text.toString();
  }

  private static @Nullable String word(@Nullable Instant moment) {
    return moment == null ? null : moment.toString();
  }

  private static void write(ObjectNode text, ConceptSums sums) {
    text.put("answers", sums.answers()).put("errors", sums.errors());
    text.put("begunRight", sums.begunRight()).put("last", sums.last().toString());
    write(text.putArray("states"), sums.states());
    write(text.putArray("shown"), sums.shown());
  }

  private static void write(ArrayNode text, StateSums sums) {
    text.add(sums.learning()).add(sums.answers()).add(sums.knows());
    text.add(sums.guesses().stayed()).add(sums.guesses().moved());
    ObjectNode beliefs = text.addObject();
    sums.beliefs()
        .forEach((name, each) -> beliefs.putArray(name).add(each.stayed()).add(each.moved()));
  }

  static LearnerSums read(String learner, String text) {
    try {
      JsonNode sums = JSON.readTree(text);
      return new LearnerSums(
          learner,
          sums.get("answers").asInt(),
          sums.get("right").asInt(),
          sums.get("rapid").asInt(),
          map(sums.get("concepts"), name -> name, SumsText::concept),
          map(sums.get("forms"), name -> name, SumsText::form),
          map(sums.get("pairs"), SumsText::pair, SumsText::pairSums),
          sums.get("last").isNull() ? null : moment(sums));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Instant moment(JsonNode sums) {
    return Instant.parse(sums.get("last").asText());
  }

  private static <K extends Comparable<K>, V> SortedMap<K, V> map(
      JsonNode node, Function<String, K> key, Function<JsonNode, V> value) {
    SortedMap<K, V> map = new TreeMap<>();
    for (Map.Entry<String, JsonNode> each : node.properties()) {
      map.put(key.apply(each.getKey()), value.apply(each.getValue()));
    }
    return map;
  }

  private static ConceptSums concept(JsonNode node) {
    return new ConceptSums(
        node.get("answers").asInt(),
        node.get("errors").asInt(),
        node.get("begunRight").asBoolean(),
        states(node.get("states")),
        states(node.get("shown")),
        moment(node));
  }

  private static StateSums states(JsonNode node) {
    return new StateSums(
        node.get(0).asDouble(),
        node.get(1).asInt(),
        node.get(2).asDouble(),
        new StateSums.Weight(node.get(3).asDouble(), node.get(4).asDouble()),
        map(
            node.get(5),
            name -> name,
            each -> new StateSums.Weight(each.get(0).asDouble(), each.get(1).asDouble())));
  }

  private static FormSums form(JsonNode node) {
    return new FormSums(node.get(0).asInt(), node.get(1).asInt(), node.get(2).asLong());
  }

  private static MarkPair pair(String words) {
    int space = words.indexOf(' ');
    return new MarkPair(words.substring(0, space), words.substring(space + 1));
  }

  private static PairSums pairSums(JsonNode node) {
    return new PairSums(
        node.get(0).asInt(), node.get(1).asInt(), node.get(2).asInt(), node.get(3).asDouble());
  }
}
