package withy.core.light;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Light characters of every class, with periods that mostly fit. */
class Characters extends DomainContextBase {

  @Provide
  Arbitrary<LightCharacter> characters() {
    return Arbitraries.of(LightClass.values())
        .flatMap(Characters::rhythms)
        .flatMap(
            rhythm ->
                Combinators.combine(colours(rhythm), periods(rhythm))
                    .as((colours, period) -> made(rhythm, colours, period)))
        .filter(Optional::isPresent)
        .map(Optional::get);
  }

  private static Optional<LightCharacter> made(
      Rhythm rhythm, List<LightColour> colours, OptionalInt period) {
    try {
      return Optional.of(LightCharacter.of(rhythm, colours, period));
    } catch (LightNotationException contradiction) {
      return Optional.empty();
    }
  }

  private static Arbitrary<Rhythm> rhythms(LightClass lightClass) {
    Arbitrary<Integer> numbers = Arbitraries.integers().between(2, 9);
    return switch (lightClass.form()) {
      case NONE, SINGLE -> Arbitraries.just(Rhythm.of(lightClass, List.of()));
      case GROUP -> numbers.map(number -> Rhythm.of(lightClass, List.of(number)));
      case ANY_GROUP -> numbers.map(n -> Rhythm.of(lightClass, n == 9 ? List.of() : List.of(n)));
      case COMPOSITE, ANY ->
          numbers.map(n -> Rhythm.of(lightClass, List.of(n, n % 3 == 2 ? 1 : n - 1)));
      case LETTERS ->
          Arbitraries.strings()
              .withCharRange('A', 'Z')
              .ofMinLength(1)
              .ofMaxLength(3)
              .map(Rhythm::ofMorse);
    };
  }

  private static Arbitrary<List<LightColour>> colours(Rhythm rhythm) {
    boolean turns = rhythm.lightClass().alternates();
    return Arbitraries.shuffle(Arrays.asList(LightColour.values()))
        .flatMap(
            all ->
                Arbitraries.integers()
                    .between(turns ? 2 : 1, 3)
                    .map(size -> List.copyOf(all.subList(0, size))));
  }

  private static Arbitrary<OptionalInt> periods(Rhythm rhythm) {
    if (rhythm.lightClass() == LightClass.FIXED) {
      return Arbitraries.just(OptionalInt.empty());
    }
    int usual = DefaultPeriods.of(rhythm, 3);
    return Arbitraries.integers()
        .between(usual / 20, usual * 3 / 20)
        .map(tens -> OptionalInt.of(10 * tens))
        .injectDuplicates(0.1)
        .map(period -> period.getAsInt() % 70 == 0 ? OptionalInt.empty() : period);
  }
}
