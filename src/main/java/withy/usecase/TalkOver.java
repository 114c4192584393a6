package withy.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;
import withy.core.mark.Practice;
import withy.core.response.Response;

/**
 * The items of a fixed drill, which everybody was asked alike, to talk them over with the class.
 */
public final class TalkOver {
  private final AssignDrill assignDrill;
  private final OpenClass openClass;
  private final Responses responses;
  private final Issuing issuing;

  TalkOver(AssignDrill assignDrill, OpenClass openClass, Responses responses, Issuing issuing) {
    this.assignDrill = assignDrill;
    this.openClass = openClass;
    this.responses = responses;
    this.issuing = issuing;
  }

  /**
   * An item that everybody was asked.
   *
   * @param answers how often each answer was given, the key first; a null answer is "not sure"
   */
  public record Asked(Item item, int answered, int right, List<Given> answers) {
    public Asked {
      answers = List.copyOf(answers);
    }

    /** What came of an item by the responses to it. */
    static Asked of(Item item, List<Response> given) {
      Map<String, Integer> times = new LinkedHashMap<>();
      times.put(item.key(), 0);
      item.options().forEach(each -> times.putIfAbsent(each.value(), 0));
      int unsure = 0;
      for (Response each : given) {
        if (each.option() == null) {
          unsure++;
        } else {
          times.merge(each.correct() ? item.key() : each.option(), 1, Integer::sum);
        }
      }
      List<Given> answers = new ArrayList<>();
      times.forEach((answer, count) -> answers.add(new Given(answer, count)));
      answers.add(new Given(null, unsure));
      int right = (int) given.stream().filter(Response::correct).count();
      return new Asked(item, given.size(), right, answers);
    }
  }

  /** How often an answer was given; null for "not sure". */
  public record Given(@Nullable String answer, int times) {}

  /**
   * The items of a drill, in their order; none unless everybody gets the same.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's
   */
  public List<Asked> items(InstructorCaller instructor, String assignmentId) {
    Assignment drill = assignDrill.one(instructor, assignmentId).assignment();
    if (!drill.terms().kind().isAlike()) {
      return List.of();
    }
    Practice practice = openClass.of(instructor, drill.schoolClass()).practice();
    List<Asked> asked = new ArrayList<>();
    IntStream.range(0, drill.composition().length())
        .forEach(position -> asked.add(asked(practice, drill, position)));
    return asked;
  }

  private Asked asked(Practice practice, Assignment drill, int position) {
    Item item = issuing.alike(practice, drill, position);
    return Asked.of(item, responses.atPosition(drill.id(), position));
  }
}
