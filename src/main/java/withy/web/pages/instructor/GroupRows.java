package withy.web.pages.instructor;

import java.util.List;
import java.util.Map;
import withy.core.measurement.PracticalGroup;
import withy.core.measurement.Review;

/** Says who could share a boat in the practical, and which answers speak for it. */
record GroupRows(Phrases phrases, AnswersBehind answers, Map<String, String> ids) {
  /** Learners that a training boat takes, common practice, no source. */
  private static final int BOAT = 4;

  List<GroupRow> of(Review review) {
    return PracticalGroup.of(review, BOAT).stream().map(this::row).toList();
  }

  private GroupRow row(PracticalGroup group) {
    boolean apart = group.needs().isEmpty();
    String names = String.join(", ", group.learners());
    return new GroupRow(
        phrases.text(apart ? "review.group-none" : all(group), names),
        apart ? group.learners().stream().map(this::all).toList() : List.of(),
        group.needs().stream().map(each -> shared(group, each)).toList());
  }

  private static String all(PracticalGroup group) {
    return group.learners().size() == 1 ? "review.group-one" : "review.group";
  }

  private GroupRow.Shared shared(PracticalGroup group, String concept) {
    String name = phrases.concept(concept);
    List<Linked> learners =
        group.learners().stream()
            .map(
                each ->
                    new Linked(
                        each,
                        phrases.text("review.answers-on", each, name),
                        answers.of(id(each), concept)))
            .toList();
    return new GroupRow.Shared(name, learners);
  }

  private Linked all(String nickname) {
    String says = phrases.text("review.answers-all", nickname);
    return new Linked(nickname, says, answers.of(id(nickname)));
  }

  private String id(String nickname) {
    return ids.getOrDefault(nickname, "");
  }
}
