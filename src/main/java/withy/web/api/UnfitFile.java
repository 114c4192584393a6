package withy.web.api;

import java.util.List;
import withy.web.Fault;
import withy.web.Json;
import withy.web.Problem;
import withy.web.Visit;
import withy.wording.Wording;

/**
 * A problem document with a list of all that is wrong in a file that was sent (RFC 9457, section
 * 3.2).
 */
record UnfitFile(
    String type,
    String title,
    int status,
    String detail,
    String instance,
    List<UnfitFile.Place> problems) {
  /**
   * What is wrong at a place.
   *
   * @param place in the file; empty for the whole of it
   */
  record Place(String place, String text) {}

  static void answer(Visit visit, Fault fault, Wording wording, List<Place> problems) {
    String key = "problem." + fault.id();
    UnfitFile json =
        new UnfitFile(
            "urn:problem:withy:" + fault.id(),
            wording.text(key + ".title"),
            fault.status(),
            wording.text(key + ".detail", problems.size()),
            visit.context().path(),
            problems);
    Json.answer(visit.context(), fault.status(), json);
    visit.context().contentType(Problem.MEDIA_TYPE);
  }
}
