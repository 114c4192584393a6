package withy.core.item;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.item.Assembly.Belief;

/**
 * A mark that was put together, with what is wrong with it.
 *
 * @param given the part chosen for each slot
 * @param wrong the wrong ones of them; none when it is right
 */
record WrongAssembly(Map<Feature, Part> given, Map<Feature, Part> wrong) {
  /**
   * Put down to the belief that explains most of the wrong parts; among equals to the one that
   * speaks against fewest of the parts given, then to the first.
   */
  Grade grade(List<Belief> beliefs) {
    if (wrong.isEmpty()) {
      return Grade.RIGHT;
    }
    @Nullable Belief best = null;
    for (Belief each : beliefs) {
      if (explained(each, wrong) > 0 && (best == null || isBetter(each, best))) {
        best = each;
      }
    }
    return best == null ? Grade.UNEXPLAINED : new Grade(best.misconception(), best.mistook());
  }

  private boolean isBetter(Belief belief, Belief than) {
    int more = explained(belief, wrong) - explained(than, wrong);
    return more > 0 || (more == 0 && missed(belief) < missed(than));
  }

  private int missed(Belief belief) {
    return belief.parts().size() - explained(belief, given);
  }

  private static int explained(Belief belief, Map<Feature, Part> parts) {
    int explained = 0;
    for (Map.Entry<Feature, Part> each : parts.entrySet()) {
      explained += each.getValue().value().equals(belief.parts().get(each.getKey())) ? 1 : 0;
    }
    return explained;
  }
}
