package withy.web.pages;

import java.util.ArrayList;
import java.util.List;
import withy.web.Visit;

/** What somebody typed into a form, and what is wrong with it. */
public final class Form {
  private final Visit visit;
  private final List<FieldProblem> problems = new ArrayList<>();

  private Form(Visit visit) {
    this.visit = visit;
  }

  /** The form that a visit sends. */
  public static Form of(Visit visit) {
    return new Form(visit);
  }

  /** The text in a field as typed; empty where there is none. */
  public String text(String field) {
    String typed = visit.context().formParam(field);
    return typed == null ? "" : typed;
  }

  /** All values of a field that may be ticked more than once. */
  public List<String> all(String field) {
    return List.copyOf(visit.context().formParams(field));
  }

  /** Notes what is wrong with a field. */
  public Form refuse(String field, String text) {
    problems.add(new FieldProblem(field, text));
    return this;
  }

  /** Whether something is wrong. */
  public boolean refused() {
    return !problems.isEmpty();
  }

  /** What is wrong, in the order of the fields. */
  public List<FieldProblem> problems() {
    return List.copyOf(problems);
  }
}
