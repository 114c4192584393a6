package withy.web.pages;

import withy.core.Term;
import withy.core.drill.Grounds;
import withy.core.item.Concept;
import withy.wording.Wording;

/** Says in one sentence, with the learner's own numbers, why a concept is asked about. */
public final class GroundsWords {
  private final Wording wording;

  public GroundsWords(Wording wording) {
    this.wording = wording;
  }

  /** To the learner, once they have answered. */
  public String toLearner(Grounds grounds) {
    String concept = wording.name(Term.parse(Concept.class, grounds.concept()));
    return said("page.why.", grounds, concept);
  }

  /** To the instructor, to go on with after the name of the concept and a colon. */
  public String toInstructor(Grounds grounds, String nickname) {
    return said("page.next.", grounds, nickname);
  }

  private String said(String prefix, Grounds grounds, String about) {
    return wording.text(
        prefix + grounds.kind().id() + ending(grounds),
        about,
        grounds.answers(),
        grounds.right(),
        grounds.wrong());
  }

  private static String ending(Grounds grounds) {
    return switch (grounds.answers()) {
      case 0 -> "";
      case 1 -> ".one";
      default -> ".many";
    };
  }
}
