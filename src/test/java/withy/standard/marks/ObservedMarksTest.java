package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import withy.core.mark.MarkRule;
import withy.standard.Covers;

/** Real marks as charts hold them: what we know again, and what we cannot express, with reasons. */
class ObservedMarksTest {
  @Test
  @Covers(MarkRule.BEACON_MEANS_WHAT_ITS_BUOY_MEANS)
  void recognisesRealMarksOrSaysWhyNot() {
    List<ObservedMark> unknown =
        ObservedMark.all().stream().filter(mark -> !mark.isRecognised()).toList();
    assertThat(unknown)
        .extracting(ObservedMark::row)
        .as("rows that are not recognised, of %s", unknown)
        .containsExactlyElementsOf(reasons().keySet());
    assertThat(ObservedMark.all().stream().filter(ObservedMark::isBeacon))
        .as("recognised beacons")
        .anyMatch(ObservedMark::isRecognised);
  }

  @Test
  void givesAReasonForEachMarkThatIsNotRecognised() {
    Map<Long, String> reasons = reasons();
    assertThat(reasons.values()).noneMatch(String::isBlank);
    assertThat(ObservedMark.all().stream().map(ObservedMark::row)).containsAll(reasons.keySet());
  }

  private static Map<Long, String> reasons() {
    Map<Long, String> reasons = new LinkedHashMap<>();
    for (var each : Tables.of("observed_beyond.csv")) {
      reasons.put(Long.parseLong(each.get("row")), each.get("reason"));
    }
    return reasons;
  }
}
