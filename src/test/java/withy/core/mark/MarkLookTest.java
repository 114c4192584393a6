package withy.core.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class MarkLookTest {
  static List<MarkLook> looks() {
    List<MarkLook> looks = new ArrayList<>();
    for (Practice practice : Practice.values()) {
      MarkingRules.kinds(practice).forEach(kind -> looks.add(MarkingRules.look(practice, kind)));
    }
    return looks;
  }

  @ParameterizedTest
  @MethodSource("looks")
  void givesEachBodyItsAppearance(MarkLook look) {
    for (BodyShape body : look.bodies()) {
      Appearance seen =
          look.appearance(
              body, look.topmarkRequired(body), look.lights().stream().findFirst().orElse(null));
      assertThat(seen.body()).isEqualTo(body);
      assertThat(seen.colours()).isEqualTo(look.colours());
      assertThat(seen.topmark() != null).isEqualTo(look.topmarkRequired(body));
    }
  }

  @Test
  void refusesToLeaveOutATopmarkThatTellsTheKind() {
    MarkLook north = MarkingRules.look(Practice.IALA_A, MarkKind.NORTH_CARDINAL);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> north.appearance(BodyShape.PILLAR, false, null))
        .withMessageContaining("north-cardinal pillar needs its topmark");
  }

  @Test
  void refusesATopmarkThatCannotBeCarried() {
    MarkLook safeWater = MarkingRules.look(Practice.IALA_A, MarkKind.SAFE_WATER);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> safeWater.appearance(BodyShape.SPHERICAL, true, null));
    MarkLook american = MarkingRules.look(Practice.USA, MarkKind.PORT_HAND);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> american.appearance(BodyShape.CAN, true, null));
  }

  @ParameterizedTest
  @EnumSource
  void refusesACardinalMarkInTheUsa(Quadrant quadrant) {
    MarkKind kind = MarkKind.cardinal(quadrant);
    assertThat(MarkingRules.has(Practice.USA, kind)).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MarkingRules.look(Practice.USA, kind))
        .withMessage("usa has no " + kind.id() + " marks");
  }
}
