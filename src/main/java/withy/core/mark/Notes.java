package withy.core.mark;

import java.util.List;

/** What the practices say beside their marks. */
final class Notes {
  /** A new danger may be doubled, and bear a racon that shows Morse D. */
  private static final PracticeNote NEW_DANGER =
      PracticeNote.of("new-danger", Documents.manual("14160", "new dangers"));

  private Notes() {}

  static List<PracticeNote> ofTheSystem() {
    return List.of(NEW_DANGER);
  }

  static List<PracticeNote> canadian() {
    return List.of(
        NEW_DANGER,
        PracticeNote.of("emergency-light", fixedAids("emergency lights")),
        PracticeNote.of("light-colour-unstated", fixedAids("colours of lights")));
  }

  static List<PracticeNote> american() {
    return List.of(
        NEW_DANGER,
        PracticeNote.of("racon", Documents.federal("62.53")),
        PracticeNote.of("virtual-aids", Documents.federal("62.52")));
  }

  private static Clause fixedAids(String section) {
    return Clause.read("Canadian Coast Guard, fixed aids", "open licence text", section);
  }
}
