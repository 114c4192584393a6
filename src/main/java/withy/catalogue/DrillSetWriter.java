package withy.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.response.DrillSet;

/**
 * Writes a drill set as {@link DrillSetReader} reads it, a field a line, without those that leave
 * all open.
 */
final class DrillSetWriter {
  private final List<String> fields = new ArrayList<>();

  private DrillSetWriter() {}

  /**
   * @param water the file of its water, which lies in that of the set; null to name it by its id
   */
  static String write(DrillSet set, @Nullable String water) {
    DrillSetWriter writer = new DrillSetWriter();
    Composition composition = set.composition();
    writer.add("title", ExactJson.write(set.title()));
    writer.addTerms("concepts", composition.concepts());
    writer.addTerms("forms", composition.forms());
    writer.addTerm("time", composition.time());
    writer.add("length", Integer.toString(composition.length()));
    writer.addTerm("practice", composition.practice());
    writer.addTerm("difficulty", composition.difficulty());
    SurveyedWater in = composition.water();
    if (in != null) {
      writer.add("water", water == null ? ExactJson.write(in.id()) : file(in.title(), water));
    }
    return "{\n  " + String.join(",\n  ", writer.fields) + "\n}\n";
  }

  /** The file of a water under a title, on one line. */
  static String file(String title, String text) {
    return ExactJson.with(text, "title", title);
  }

  private void addTerm(String field, @Nullable Term term) {
    if (term != null) {
      add(field, ExactJson.write(term.id()));
    }
  }

  private void addTerms(String field, List<? extends Term> terms) {
    if (!terms.isEmpty()) {
      add(field, ExactJson.write(terms.stream().map(Term::id).toList()));
    }
  }

  private void add(String field, String value) {
    fields.add(ExactJson.write(field) + ": " + value);
  }
}
