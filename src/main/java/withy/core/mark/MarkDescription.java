package withy.core.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * All that a practice says of one mark, in one place: how it looks by day and at night, on which
 * side it is left, what it asks, what is written on it and where all that is laid down. Pictures,
 * items, words and pages are made from it.
 *
 * @param id by which pages and words know it; unlike {@link #kind} unique in a practice
 * @param lightLimit which lights it may show, also beyond those in common use
 * @param telling the rules by which it is told; null where colours and symbol say all and its light
 *     tells nothing
 * @param chartTells whether nothing but the chart tells it from another mark of the same looks
 * @param sources where it is laid down, beside the rules by which it is told
 * @param nameKey key of its name; with {@code .look} and {@code .meaning} after {@link #aboutKey}
 *     those of the sentences how it looks and what it means
 * @param waters in which alone it is met; null for all
 */
public record MarkDescription(
    String id,
    MarkKind kind,
    MarkGroup group,
    MarkLook look,
    LightLimit lightLimit,
    Passing passing,
    Demand demand,
    Numbering numbering,
    @Nullable Telling telling,
    boolean chartTells,
    List<Clause> sources,
    String nameKey,
    String aboutKey,
    @Nullable Waters waters) {
  public MarkDescription {
    sources = List.copyOf(sources);
  }

  /** Begins a description under the id of its kind. */
  public static Builder of(MarkKind kind, MarkGroup group) {
    return new Builder(kind, group);
  }

  /** Key of the sentence how it looks. */
  public String lookKey() {
    return aboutKey + ".look";
  }

  /** Key of the sentence what it means. */
  public String meaningKey() {
    return aboutKey + ".meaning";
  }

  /** Whether one who sees it by day can name it from what every book says. */
  public boolean isToldByLook() {
    return !chartTells;
  }

  /** Whether its light or its silhouette tells it. */
  public boolean isToldAtNight() {
    return telling != null;
  }

  /** Every clause that lays it down, those from memory as well. */
  public List<Clause> clauses() {
    List<Clause> all = new ArrayList<>();
    Optional.ofNullable(telling)
        .ifPresent(
            rules -> {
              all.add(rules.look().clause());
              all.add(rules.silhouette().clause());
              all.add(rules.light().clause());
            });
    all.addAll(sources);
    return all.stream().distinct().toList();
  }

  /** Puts a description together. What is not said is: unlit, unnumbered, told by the chart. */
  public static final class Builder {
    private final MarkKind kind;
    private final MarkGroup group;
    private String id;
    private List<BodyShape> bodies = List.of(BodyShape.PILLAR);
    private ColourPattern pattern = ColourPattern.PLAIN;
    private List<Colour> colours = List.of();
    private @Nullable Symbol symbol;
    private @Nullable Board board;
    private List<Structure> structures = List.of();
    private @Nullable Topmark topmark;
    private List<BodyShape> needing = List.of();
    private List<LightCharacter> lights = List.of();
    private List<Retroreflector> retroreflectors = List.of();
    private LightLimit limit = light -> false;
    private Passing passing = Passing.UNTOLD;
    private Demand demand = Demand.READ_CHART;
    private Numbering numbering = Numbering.BARE;
    private @Nullable Telling telling;
    private boolean chartTells;
    private List<Clause> sources = List.of();
    private String nameKey;
    private String aboutKey;
    private @Nullable Waters waters;

    private Builder(MarkKind kind, MarkGroup group) {
      this.kind = kind;
      this.group = group;
      this.id = kind.id();
      this.nameKey = "mark." + kind.id();
      this.aboutKey = nameKey;
    }

    public Builder id(String id) {
      this.id = id;
      return this;
    }

    public Builder bodies(BodyShape... bodies) {
      return bodies(List.of(bodies));
    }

    public Builder bodies(List<BodyShape> bodies) {
      this.bodies = bodies;
      return this;
    }

    public Builder painted(ColourPattern pattern, Colour... colours) {
      this.pattern = pattern;
      this.colours = List.of(colours);
      return this;
    }

    public Builder symbol(Symbol symbol) {
      this.symbol = symbol;
      return this;
    }

    /** A dayboard on one of these structures. */
    public Builder board(Board board, Structure... structures) {
      this.board = board;
      this.structures = List.of(structures);
      return bodies(BodyShape.DAYBOARD);
    }

    public Builder structures(Structure... structures) {
      this.structures = List.of(structures);
      return this;
    }

    /** A topmark that every one of its bodies may carry and these must. */
    public Builder topmark(Topmark topmark, List<BodyShape> needing) {
      this.topmark = topmark;
      this.needing = needing;
      return this;
    }

    /** Lights in common use, the most usual first, and what other ones it may show. */
    public Builder lights(LightLimit limit, List<String> notations) {
      this.limit = limit;
      this.lights = notations.stream().map(LightCharacter::parse).toList();
      return this;
    }

    public Builder retroreflectors(Colour... bands) {
      this.retroreflectors = List.of(bands).stream().map(Retroreflector::band).toList();
      return this;
    }

    public Builder retroreflector(Retroreflector piece) {
      this.retroreflectors = List.of(piece);
      return this;
    }

    /** On which side it is left, and what it asks. */
    public Builder asks(Passing passing, Demand demand) {
      this.passing = passing;
      this.demand = demand;
      return this;
    }

    public Builder numbering(Numbering numbering) {
      this.numbering = numbering;
      return this;
    }

    public Builder toldBy(MarkRule look, MarkRule silhouette, MarkRule light) {
      this.telling = new Telling(look, silhouette, light);
      return this;
    }

    /** Only the chart tells it from another mark of the same looks. */
    public Builder toldByChart() {
      this.chartTells = true;
      return this;
    }

    public Builder laidDown(Clause... sources) {
      this.sources = List.of(sources);
      return this;
    }

    /** The keys of its words. */
    public Builder words(String nameKey, String aboutKey) {
      this.nameKey = nameKey;
      this.aboutKey = aboutKey;
      return this;
    }

    public Builder onlyIn(Waters waters) {
      this.waters = waters;
      return this;
    }

    public MarkDescription build() {
      MarkLook look =
          new MarkLook(
              kind,
              bodies,
              pattern,
              colours,
              symbol,
              board,
              structures,
              topmark,
              needing,
              lights,
              retroreflectors);
      return new MarkDescription(
          id,
          kind,
          group,
          look,
          limit,
          passing,
          demand,
          numbering,
          telling,
          chartTells,
          sources,
          nameKey,
          aboutKey,
          waters);
    }
  }
}
