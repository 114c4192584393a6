package withy.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.item.Assembly;
import withy.core.item.Feature;
import withy.core.item.Part;
import withy.core.item.Passage;
import withy.core.item.Quantity;
import withy.core.item.UnreadableQuantity;

/** Reads what a learner gives as the word by which an answer is kept, and the other way round. */
final class AnswerReading {
  private AnswerReading() {}

  /**
   * The word of an answer.
   *
   * @throws Refused UNKNOWN_OPTION, NO_NUMBER, OTHER_UNIT, INCOMPLETE_ANSWER
   */
  static String word(IssuedItem issued, Given given) {
    if (issued.item().answer() instanceof Quantity quantity) {
      return number(quantity, given);
    }
    if (issued.item().answer() instanceof Assembly assembly) {
      return assembled(issued, assembly, given);
    }
    if (issued.item().answer() instanceof Passage passage) {
      return passed(issued, passage, given);
    }
    return option(issued, given);
  }

  private static String option(IssuedItem issued, Given given) {
    return issued.options().stream()
        .filter(each -> given.equals(new Given.Text(each.token())))
        .map(each -> each.option().value())
        .findFirst()
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_OPTION));
  }

  private static String number(Quantity quantity, Given given) {
    String symbol = quantity.unit().symbol();
    if (!(given instanceof Given.Text typed)) {
      throw new Refused(Reason.NO_NUMBER, symbol);
    }
    try {
      return quantity.read(typed.text());
    } catch (UnreadableQuantity unreadable) {
      throw new Refused(reason(unreadable), symbol);
    }
  }

  private static Reason reason(UnreadableQuantity unreadable) {
    return switch (unreadable.flaw()) {
      case NO_NUMBER -> Reason.NO_NUMBER;
      case OTHER_UNIT -> Reason.OTHER_UNIT;
    };
  }

  private static String assembled(IssuedItem issued, Assembly assembly, Given given) {
    Map<String, String> tokens = given instanceof Given.Parts parts ? parts.tokens() : Map.of();
    Map<Feature, String> chosen = new LinkedHashMap<>();
    for (OpaqueSlot slot : issued.slots()) {
      @Nullable String token = tokens.get(slot.feature().id());
      if (token == null) {
        throw new Refused(Reason.INCOMPLETE_ANSWER, slot.feature().id());
      }
      chosen.put(slot.feature(), slot.value(token));
    }
    if (chosen.size() != tokens.size()) {
      throw new Refused(Reason.UNKNOWN_OPTION);
    }
    return assembly.word(chosen);
  }

  private static String passed(IssuedItem issued, Passage passage, Given given) {
    Map<String, String> tokens = given instanceof Given.Parts parts ? parts.tokens() : Map.of();
    List<String> sides = new ArrayList<>();
    for (OpaqueLeg leg : issued.legs()) {
      @Nullable String token = tokens.get(leg.name());
      if (token == null) {
        throw new Refused(Reason.INCOMPLETE_ANSWER, leg.name());
      }
      sides.add(leg.value(token));
    }
    if (sides.size() != tokens.size()) {
      throw new Refused(Reason.UNKNOWN_OPTION);
    }
    return passage.word(sides);
  }

  /** What a learner gives for the answer that a word stands for. */
  static Given given(IssuedItem issued, String word) {
    if (issued.item().answer() instanceof Assembly assembly) {
      return parts(issued, assembly.parts(word));
    }
    if (issued.item().answer() instanceof Passage passage) {
      return sides(issued, passage.sides(word));
    }
    return issued.options().stream()
        .filter(each -> each.option().value().equals(word))
        .map(each -> new Given.Text(each.token()))
        .findFirst()
        .orElseGet(() -> new Given.Text(word));
  }

  private static Given parts(IssuedItem issued, Map<Feature, Part> parts) {
    Map<String, String> tokens = new LinkedHashMap<>();
    for (OpaqueSlot slot : issued.slots()) {
      @Nullable Part part = parts.get(slot.feature());
      if (part != null) {
        tokens.put(slot.feature().id(), slot.token(part));
      }
    }
    return new Given.Parts(tokens);
  }

  private static Given sides(IssuedItem issued, List<String> sides) {
    Map<String, String> tokens = new LinkedHashMap<>();
    for (OpaqueLeg leg : issued.legs()) {
      tokens.put(leg.name(), leg.token(sides.get(leg.number())));
    }
    return new Given.Parts(tokens);
  }
}
