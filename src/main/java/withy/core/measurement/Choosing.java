package withy.core.measurement;

import java.util.SortedSet;
import java.util.TreeSet;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** Gathers who chose the wrong answers of one belief, and who could have. */
final class Choosing {
  private final String misconception;
  private final Elsewhere elsewhere;
  private final PointBiserial against = new PointBiserial();
  private final SortedSet<String> among = new TreeSet<>();
  private int chosen;
  private int offered;

  Choosing(String misconception, Elsewhere elsewhere) {
    this.misconception = misconception;
    this.elsewhere = elsewhere;
  }

  void add(Response answer) {
    boolean taken = misconception.equals(answer.misconception());
    boolean option = answer.offered().stream().anyMatch(this::names);
    boolean any = answer.offered().isEmpty() || misconception.equals(OfferedOption.UNEXPLAINED);
    chosen += taken ? 1 : 0;
    offered += option || any || taken ? 1 : 0;
    Double score = elsewhere.of(answer.learner());
    if (option && score != null) {
      among.add(answer.learner());
      against.add(taken, score);
    }
  }

  private boolean names(OfferedOption option) {
    return misconception.equals(option.misconception());
  }

  /** What came of it; the work of an option is told from as many learners on as discrimination. */
  Distractor found() {
    double share = offered == 0 ? 0 : (double) chosen / offered;
    boolean told =
        among.size() >= FormAnalysis.FEWEST_LEARNERS
            && !misconception.equals(OfferedOption.UNEXPLAINED);
    Distractor.Work work = told ? Distractor.Work.of(share, against.coefficient()) : null;
    return new Distractor(misconception, chosen, offered, work);
  }
}
