package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What those hide who have not answered on a concept: its verdict if all of them were wrong
 * throughout and if all were right throughout. Each is taken to answer as often as the others did
 * in the mean. Nothing is assumed of why they are silent, so what lies between the two is all that
 * can be said (Manski 1990, American Economic Review 80:319, bounds of the worst case; from
 * memory).
 *
 * @param silent how many have not answered on the concept; at least 1
 * @param verdict by those who answered
 * @param ifRight the verdict if all silent ones were right
 * @param ifWrong the verdict if all silent ones were wrong
 */
public record Silence(
    String concept, int silent, Verdict verdict, Verdict ifRight, Verdict ifWrong) {
  /** Whether those who are silent could make it another verdict. */
  public boolean mayChange() {
    return verdict != ifRight || verdict != ifWrong;
  }

  /**
   * What silence hides of each concept that somebody answered on, by its name; without those on
   * which everybody did.
   *
   * @param review of those who answered
   * @param learners those who answered
   * @param classSize those who have not answered at all among them
   */
  public static List<Silence> of(Review review, Collection<LearnerSums> learners, int classSize) {
    SortedMap<String, List<Tally>> tallies = new TreeMap<>();
    for (LearnerSums learner : learners) {
      learner
          .concepts()
          .forEach(
              (concept, sums) ->
                  tallies.computeIfAbsent(concept, name -> new ArrayList<>()).add(sums.tally()));
    }
    SortedMap<String, Silence> hidden = new TreeMap<>();
    for (ConceptError each : review.concepts()) {
      List<Tally> heard = tallies.getOrDefault(each.concept(), List.of());
      if (!heard.isEmpty() && heard.size() < classSize) {
        hidden.put(each.concept(), of(each, heard, classSize));
      }
    }
    return List.copyOf(hidden.values());
  }

  private static Silence of(ConceptError error, List<Tally> heard, int classSize) {
    int silent = classSize - heard.size();
    int each = Math.max(1, Math.round((float) error.rate().answers() / heard.size()));
    return new Silence(
        error.concept(),
        silent,
        error.verdict(),
        verdict(heard, silent, new Tally(each, 0)),
        verdict(heard, silent, new Tally(each, each)));
  }

  private static Verdict verdict(List<Tally> heard, int silent, Tally each) {
    List<Tally> all = new ArrayList<>(heard);
    for (int i = 0; i < silent; i++) {
      all.add(each);
    }
    ClassRate rate = ClassRate.of(all, all.size());
    return Verdict.of(rate.learners(), all.size(), rate.answers(), rate.aboveTolerance());
  }
}
