package withy.core.hydrography;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/**
 * Over many seeds, for every blueprint and practice: the side that the rules give keeps draught and
 * margin, the other one does not; and marks are laid as an authority would lay them. {@code
 * -Dwithy.waters=20000} runs all of them. What fails here goes to {@code regressions.csv}.
 */
class WatersAgreeIT {
  private static final int SEEDS = Integer.getInteger("withy.waters", 150);

  /** No more than these are shown. */
  private static final int SHOWN = 20;

  @ParameterizedTest
  @EnumSource(Blueprint.class)
  void rulesAndSoundingsAgree(Blueprint blueprint) {
    List<String> faults = new ArrayList<>();
    long asked = 0;
    for (int seed = 0; seed < SEEDS && faults.size() < SHOWN; seed++) {
      List<Waterway> waters = Waters.of(blueprint, seed, Keel.CRUISER);
      for (int i = 0; i < waters.size(); i++) {
        Practice practice = Practice.values().get(i);
        WatersAgreement.Found found = WatersAgreement.in(practice, waters.get(i), Keel.CRUISER);
        asked += found.asked();
        String row = blueprint.id() + "," + practice.id() + "," + seed + ",";
        found.faults().forEach(each -> faults.add(row + each));
        WatersMarked.faults(practice, waters.get(i)).forEach(each -> faults.add(row + each));
      }
    }
    System.out.println(blueprint.id() + ": " + SEEDS + " seeds, " + asked + " ways tried");
    assertThat(faults).isEmpty();
    assertThat(asked).isGreaterThan(SEEDS);
  }
}
