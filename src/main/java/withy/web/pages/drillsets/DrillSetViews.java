package withy.web.pages.drillsets;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import withy.core.item.ItemGenerator;
import withy.usecase.DrillSetProblem;
import withy.usecase.KeepDrillSet.Listed;
import withy.usecase.SchoolClass;
import withy.wording.Wording;

/** Puts drill sets into words. */
final class DrillSetViews {
  private final Wording wording;
  private final DrillSetWords words;

  DrillSetViews(Wording wording) {
    this.wording = wording;
    this.words = new DrillSetWords(wording);
  }

  DrillSetsView list(
      List<Listed> all, @Nullable String news, String text, List<DrillSetProblem> problems) {
    return new DrillSetsView(
        rows(all, Listed::own),
        rows(all, each -> !each.own() && !each.authored()),
        rows(all, Listed::authored),
        news,
        text,
        problems.stream().map(this::placed).toList());
  }

  private List<DrillSetRow> rows(List<Listed> all, Predicate<Listed> which) {
    return all.stream().filter(which).map(this::row).toList();
  }

  private DrillSetRow row(Listed listed) {
    String line = words.line(listed.set().composition());
    String by = listed.by();
    String about = by == null ? line : wording.text("page.drill-set.line-by", line, by);
    return new DrillSetRow(listed.id(), listed.set().title(), about);
  }

  private PlacedProblem placed(DrillSetProblem problem) {
    String text = wording.text(problem.key(), problem.arguments().toArray());
    return new PlacedProblem(problem.place(), text);
  }

  DrillSetView one(Listed listed, String typed, List<SchoolClass> all, @Nullable String news) {
    List<ClassChoice> classes =
        all.stream()
            .filter(each -> isAsked(listed, each))
            .map(each -> new ClassChoice(each.id(), each.name()))
            .toList();
    return new DrillSetView(
        listed.id(),
        listed.set().title(),
        typed,
        listed.own(),
        listed.shared(),
        from(listed),
        news,
        words.facts(listed.set().composition()),
        classes,
        wording.text(says(all, classes)));
  }

  private static boolean isAsked(Listed listed, SchoolClass schoolClass) {
    return !ItemGenerator.measurable(schoolClass.practice(), listed.set().composition()).isEmpty();
  }

  private String from(Listed listed) {
    if (listed.authored()) {
      return wording.text("page.drill-set.from-authored");
    }
    String by = listed.by();
    if (by != null) {
      return wording.text("page.drill-set.from-shared", by);
    }
    return wording.text(
        listed.shared() ? "page.drill-set.from-own-shared" : "page.drill-set.from-own");
  }

  private static String says(List<SchoolClass> all, List<ClassChoice> classes) {
    if (all.isEmpty()) {
      return "page.drill-set.no-class";
    }
    return classes.isEmpty() ? "page.drill-set.no-items" : "page.drill-set.assign-says";
  }
}
