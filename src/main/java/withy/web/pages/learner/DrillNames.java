package withy.web.pages.learner;

import withy.core.response.DrillKind;
import withy.usecase.IssuedItem;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.web.pages.DrillTitles;
import withy.wording.Wording;

/** What a drill is called, and a place in it. */
record DrillNames(Wording wording) {
  String title(OwnAssignment drill) {
    return new DrillTitles(wording).of(drill);
  }

  String place(OwnAssignment drill, IssuedItem issued) {
    String key = drill.kind() == DrillKind.READINESS ? "place-at-most" : "place";
    return wording.text("page.item." + key, issued.position() + 1, drill.length());
  }
}
