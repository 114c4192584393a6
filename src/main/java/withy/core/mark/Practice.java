package withy.core.mark;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import withy.core.Term;

/**
 * A national rule book on top of a region: the marks that it has, each with all that it says of
 * them. Two practices are the same only if they are the same object.
 */
public final class Practice implements Term {
  public static final Practice IALA_A =
      new Practice("iala-a", Region.A, SystemMarks.of(Customs.IALA_A), false, Notes.ofTheSystem());
  public static final Practice IALA_B =
      new Practice("iala-b", Region.B, SystemMarks.of(Customs.IALA_B), false, Notes.ofTheSystem());
  public static final Practice CANADA =
      new Practice("canada", Region.B, CanadianMarks.all(), false, Notes.canadian());
  public static final Practice USA =
      new Practice("usa", Region.B, AmericanMarks.all(), true, Notes.american());

  private static final List<Practice> ALL = List.of(IALA_A, IALA_B, CANADA, USA);

  private final String id;
  private final Region region;
  private final List<MarkDescription> marks;
  private final List<MarkKind> kinds;
  private final boolean feet;
  private final List<PracticeNote> notes;

  private Practice(
      String id,
      Region region,
      List<MarkDescription> marks,
      boolean feet,
      List<PracticeNote> notes) {
    this.id = id;
    this.region = region;
    this.marks = List.copyOf(marks);
    this.feet = feet;
    this.notes = List.copyOf(notes);
    Set<MarkKind> kinds = new LinkedHashSet<>();
    Set<String> ids = new LinkedHashSet<>();
    for (MarkDescription each : marks) {
      kinds.add(each.kind());
      if (!ids.add(each.id())) {
        throw new IllegalArgumentException(id + " describes " + each.id() + " twice");
      }
    }
    this.kinds = List.copyOf(kinds);
  }

  /** The practices known here. */
  public static List<Practice> values() {
    return ALL;
  }

  /**
   * The practice that a word stands for.
   *
   * @throws IllegalArgumentException if the word is none of theirs, naming those there are
   */
  public static Practice parse(String word) {
    return Term.parse(ALL, word);
  }

  /** This practice with one more mark. */
  public Practice with(MarkDescription mark) {
    List<MarkDescription> more = new ArrayList<>(marks);
    more.add(mark);
    return new Practice(id, region, more, feet, notes);
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String name() {
    return id;
  }

  public Region region() {
    return region;
  }

  /** The marks that it has, grouped as the standards group them. */
  public List<MarkDescription> marks() {
    return marks;
  }

  /** Those of its marks that fit, in their order. */
  public List<MarkDescription> marks(Predicate<MarkDescription> fitting) {
    List<MarkDescription> fit = new ArrayList<>();
    for (MarkDescription each : marks) {
      if (fitting.test(each)) {
        fit.add(each);
      }
    }
    return fit;
  }

  /** The kinds of its marks, in the order of {@link #marks()}. */
  public List<MarkKind> kinds() {
    return kinds;
  }

  /** Whether its charts and lists tell heights in feet rather than metres. */
  public boolean tellsFeet() {
    return feet;
  }

  /** What it says beside its marks: facts of which there is no picture. */
  public List<PracticeNote> notes() {
    return notes;
  }

  /** The mark of an id. */
  public Optional<MarkDescription> mark(String id) {
    return marks.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  /** The first of its marks of a kind, which stands for the kind; empty where it has none. */
  public Optional<MarkDescription> mark(MarkKind kind) {
    for (MarkDescription each : marks) {
      if (each.kind().equals(kind)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  /**
   * The one of its marks that a mark of a kind is, as it looks: a daybeacon by its board, a mark of
   * the Intracoastal Waterway by its symbol. Empty where it has none of the kind.
   */
  public Optional<MarkDescription> mark(MarkKind kind, Appearance seen) {
    for (MarkDescription each : marks) {
      if (each.kind().equals(kind) && each.look().isLike(seen)) {
        return Optional.of(each);
      }
    }
    return mark(kind);
  }

  @Override
  public String toString() {
    return id;
  }
}
