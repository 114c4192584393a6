package withy.store;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.response.OfferedOption;
import withy.usecase.Issue;

/** Lists as one text: words with a space between, pairs with an equals sign. */
final class Words {
  private Words() {}

  static String of(List<String> words) {
    return String.join(" ", words);
  }

  static String ofTerms(List<? extends Term> terms) {
    return terms.stream().map(Term::id).collect(Collectors.joining(" "));
  }

  static List<String> read(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
  }

  static <E extends Enum<E> & Term> List<E> readTerms(Class<E> type, String text) {
    return read(text).stream().map(word -> Term.parse(type, word)).toList();
  }

  static <E extends Enum<E> & Term> @Nullable E readTerm(Class<E> type, @Nullable String word) {
    return word == null ? null : Term.parse(type, word);
  }

  static String ofChoices(List<Issue.Choice> choices) {
    return choices.stream()
        .map(each -> each.token() + "=" + each.value())
        .collect(Collectors.joining(" "));
  }

  /** No token and no value holds an equals sign. */
  static List<Issue.Choice> readChoices(String text) {
    return read(text).stream()
        .map(pair -> pair.split("=", 2))
        .map(pair -> new Issue.Choice(pair[0], pair[1]))
        .toList();
  }

  static String ofOffered(List<OfferedOption> offered) {
    return offered.stream().map(Words::ofOffered).collect(Collectors.joining(" "));
  }

  /** No misconception has a plus sign in its name. */
  private static String ofOffered(OfferedOption option) {
    StringBuilder words = new StringBuilder(option.value()).append('=');
    words.append(option.misconception() == null ? "" : option.misconception());
    option.also().forEach(each -> words.append('+').append(each));
    return words.toString();
  }

  static List<OfferedOption> readOffered(String text) {
    return read(text).stream()
        .map(pair -> pair.split("=", 2))
        .map(pair -> offered(pair[0], List.of(pair[1].split("\\+", -1))))
        .toList();
  }

  private static OfferedOption offered(String value, List<String> beliefs) {
    String named = beliefs.get(0).isEmpty() ? null : beliefs.get(0);
    return new OfferedOption(value, named, beliefs.subList(1, beliefs.size()));
  }
}
