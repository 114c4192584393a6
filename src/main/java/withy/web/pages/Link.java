package withy.web.pages;

/**
 * A way to another page, or to the same one shown otherwise.
 *
 * @param current whether it is what is shown now
 */
public record Link(String text, String href, boolean current) {
  /** A way to a page that is not the one shown. */
  public static Link to(String text, Object address) {
    return new Link(text, address.toString(), false);
  }
}
