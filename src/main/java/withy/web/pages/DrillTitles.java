package withy.web.pages;

import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.Assignment;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.wording.Wording;

/** What a drill is called, also where nobody gave it a title: a rehearsal after its passage. */
public record DrillTitles(Wording wording) {
  /** For an instructor. */
  public String of(Assignment drill) {
    SurveyedWater passage = drill.passage();
    return title(drill.title(), passage == null ? null : passage.title());
  }

  /** For the learner who does it. */
  public String of(OwnAssignment drill) {
    return title(drill.title(), drill.passage());
  }

  private String title(String given, @Nullable String passage) {
    if (!given.isEmpty()) {
      return given;
    }
    return passage == null
        ? wording.text("page.drills.untitled")
        : wording.text("page.compose.rehearsal-of", passage);
  }
}
