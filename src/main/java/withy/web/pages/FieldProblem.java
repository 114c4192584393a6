package withy.web.pages;

/**
 * What is wrong with a form.
 *
 * @param field the name of the field it stands by
 * @param text what to do, in the words of the field's label
 */
public record FieldProblem(String field, String text) {}
