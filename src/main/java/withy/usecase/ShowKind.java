package withy.usecase;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.measurement.KindAnalysis;
import withy.core.response.Response;

/** Shows an instructor how the items of one kind do in a class: the page of an item on paper. */
public final class ShowKind {
  /**
   * So many answers are looked at, the newest, so that the cost does not grow with history: some
   * thirty each of a class of sixty, and what a question was worth long ago matters little.
   */
  static final int NEWEST = 2_000;

  /** Items that are drawn again. */
  private static final int SHOWN = 3;

  /** Among so many of the newest answers these are looked for. */
  private static final int LOOKED = 20;

  private final OpenClass openClass;
  private final Evidence evidence;
  private final ClassReviews reviews;
  private final DrawnAgain drawnAgain;
  private final int newest;

  /**
   * @param newest how many answers are looked at
   */
  ShowKind(
      OpenClass openClass,
      Evidence evidence,
      ClassReviews reviews,
      DrawnAgain drawnAgain,
      int newest) {
    this.openClass = openClass;
    this.evidence = evidence;
    this.reviews = reviews;
    this.drawnAgain = drawnAgain;
    this.newest = newest;
  }

  /**
   * How the items of a kind do in a class.
   *
   * @param older whether there are older answers than those looked at; they count among those to
   *     everything else
   * @param items the newest, of different right answers where there are
   */
  public record Found(
      SchoolClass schoolClass,
      Form form,
      Concept concept,
      KindAnalysis analysis,
      boolean older,
      List<Shown> items) {
    public Found {
      items = List.copyOf(items);
    }
  }

  /** An item as it was asked, by its id. */
  public record Shown(String id, Item item) {}

  /**
   * How the items of a kind do in a class.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public Found of(InstructorCaller instructor, String classId, Form form, Concept concept) {
    SchoolClass own = openClass.of(instructor, classId);
    Behind kind = Behind.kind(own.id(), form.id(), concept.id());
    List<StoredResponse> found = evidence.newest(kind, null, newest + 1);
    boolean older = found.size() > newest;
    List<Response> answers = found.stream().limit(newest).map(StoredResponse::response).toList();
    // the sums are read after the answers, so that these are among them
    KindAnalysis analysis = KindAnalysis.of(answers, reviews.sums(own.id()));
    return new Found(own, form, concept, analysis, older, shown(answers));
  }

  /**
   * The kinds that a class has answered, in the order of concepts, then of forms.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<Evidence.Kind> answered(InstructorCaller instructor, String classId) {
    return evidence.kinds(openClass.of(instructor, classId).id());
  }

  private List<Shown> shown(List<Response> newest) {
    List<Shown> shown = new ArrayList<>();
    Set<Item> seen = new LinkedHashSet<>();
    for (Response each : differentFirst(newest.subList(0, Math.min(LOOKED, newest.size())))) {
      Item item = shown.size() < SHOWN ? drawnAgain.of(each.item()) : null;
      if (item != null && seen.add(item)) {
        shown.add(new Shown(each.item(), item));
      }
    }
    return shown;
  }

  /** First one of each right answer, then the others in the same order. */
  private static List<Response> differentFirst(List<Response> newest) {
    Set<String> keys = new LinkedHashSet<>();
    List<Response> first = new ArrayList<>();
    List<Response> others = new ArrayList<>();
    newest.forEach(each -> (keys.add(each.key()) ? first : others).add(each));
    first.addAll(others);
    return first;
  }
}
