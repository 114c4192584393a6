package withy.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import withy.core.item.Item;
import withy.core.item.Passage;
import withy.core.mark.Practice;
import withy.fixture.FreeItems;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Items without options, as the command scenarios writes them. */
class AnswerJsonTest {
  private static final ItemWording WORDS = new ItemWording(Wording.of(Locale.ENGLISH));

  @Test
  void aNumberStandsInPlaceOfOptionsAndKey() throws JsonProcessingException {
    JsonNode json = json(FreeItems.number(Practice.IALA_A, List.of(), 1, 0));
    assertThat(json.has("options")).isFalse();
    assertThat(json.has("key")).isFalse();
    JsonNode answer = json.get("answer");
    assertThat(answer.get("unit").textValue()).isEqualTo("M");
    assertThat(answer.get("value").doubleValue()).isEqualTo(19.4);
    assertThat(answer.get("tolerance").doubleValue()).isEqualTo(0.6);
    assertThat(answer.get("beliefs").get(0).get("value").doubleValue()).isEqualTo(13.4);
    assertThat(answer.get("beliefs").get(0).get("misconception").textValue())
        .isEqualTo("region-swapped");
    assertThat(answer.get("beliefs").get(0).get("mistook").textValue()).isNotBlank();
  }

  @Test
  void anAssemblyHasSlotsOfPlainValuesAndAKeyWithOneChoiceEach() throws JsonProcessingException {
    JsonNode json = json(FreeItems.assembly(Practice.IALA_A, List.of(), 1, 0));
    assertThat(json.has("options")).isFalse();
    List<String> slots = new ArrayList<>();
    for (JsonNode slot : json.get("slots")) {
      String name = slot.get("slot").textValue();
      slots.add(name);
      List<String> choices = new ArrayList<>();
      slot.get("choices").forEach(each -> choices.add(each.textValue()));
      assertThat(choices).contains(json.get("key").get(name).textValue()).hasSizeGreaterThan(1);
      assertThat(choices).noneMatch(each -> each.contains(" ") || each.contains("="));
    }
    assertThat(slots).containsExactly("body", "colours", "topmark", "light");
    assertThat(json.get("key")).hasSize(4);
    assertThat(json.get("beliefs").get(0).get("parts").get("colours").textValue())
        .isEqualTo("plain-green");
  }

  @Test
  void aPassageHasPartsInTheOrderInWhichTheMarksAreMetAndTheRightTrack()
      throws JsonProcessingException {
    Item item = FreeItems.passage(Practice.IALA_A, List.of(), 1, 0);
    JsonNode json = json(item);
    assertThat(json.has("options")).isFalse();
    assertThat(json.has("key")).isFalse();
    assertThat(json.get("parts")).hasSize(((Passage) item.answer()).legs().size());
    int mark = 0;
    for (JsonNode part : json.get("parts")) {
      assertThat(part.get("mark").intValue()).isEqualTo(mark++);
      assertThat(json.get("marks").get(part.get("mark").intValue()).get("position")).hasSize(2);
      for (JsonNode option : part.get("options")) {
        boolean key = option.get("value").equals(part.get("key"));
        assertThat(option.get("misconception").isNull()).isEqualTo(key);
        assertThat(option.get("track")).hasSizeGreaterThan(2);
        assertThat(option.get("leastDepth").isNumber()).isTrue();
      }
    }
    assertThat(json.get("track").get(0)).isEqualTo(json.get("water").get("boat"));
    assertThat(json.get("leastDepth").doubleValue()).isGreaterThanOrEqualTo(1.9);
    assertThat(json.get("beliefs").get(0).get("sides")).hasSameSizeAs(json.get("parts"));
  }

  private static JsonNode json(Item item) throws JsonProcessingException {
    return JsonMapper.builder().build().readTree(ItemJson.line(item, WORDS));
  }
}
