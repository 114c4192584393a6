package withy.web.pages.learner;

import java.util.List;
import withy.core.item.Item;
import withy.core.item.Quantity;
import withy.usecase.IssuedItem;
import withy.usecase.OpaqueLeg;
import withy.usecase.Reason;
import withy.web.pages.FieldProblem;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** What is wrong with an answer that cannot be taken, and what to do. */
final class Problems {
  private final Wording wording;

  Problems(Wording wording) {
    this.wording = wording;
  }

  /** Where nothing was answered, or not all that is asked. */
  List<FieldProblem> missing(IssuedItem issued, TypedAnswer typed) {
    if (issued.item().answer() instanceof Quantity) {
      return List.of(number(typed.saysTwoThings() ? "page.item.number-or-not" : "page.item.type"));
    }
    if (!issued.legs().isEmpty()) {
      return issued.legs().stream()
          .filter(each -> !typed.parts().containsKey(each.name()))
          .map(each -> leg(issued.item(), each))
          .toList();
    }
    if (issued.slots().isEmpty()) {
      return List.of(new FieldProblem("option", wording.text("page.item.choose")));
    }
    return issued.slots().stream()
        .map(each -> each.feature())
        .filter(each -> !typed.parts().containsKey(each.id()))
        .map(
            each ->
                new FieldProblem(
                    TypedAnswer.field(each.id()),
                    wording.text("page.item.choose-part", wording.name(each))))
        .toList();
  }

  private FieldProblem leg(Item item, OpaqueLeg leg) {
    return new FieldProblem(
        TypedAnswer.field(leg.name()),
        wording.text("page.item.choose-side", new ItemWording(wording).met(item, leg.number())));
  }

  /** Where a number was refused. */
  List<FieldProblem> unreadable(Reason reason, Object unit) {
    boolean other = reason == Reason.OTHER_UNIT;
    String key = other ? "page.item.other-unit" : "page.item.no-number";
    return List.of(new FieldProblem(TypedAnswer.NUMBER, wording.text(key, unit)));
  }

  private FieldProblem number(String key) {
    return new FieldProblem(TypedAnswer.NUMBER, wording.text(key));
  }
}
