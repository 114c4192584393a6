package withy.usecase;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Practice;

/** Founds classes, each with a join code that no other has. */
final class Founding {
  private Founding() {}

  static SchoolClass found(
      SchoolClasses classes,
      Secrets secrets,
      String name,
      Practice practice,
      @Nullable String instructor) {
    while (true) {
      SchoolClass founded =
          new SchoolClass(
              secrets.id(), name, practice, secrets.code(Codes.JOIN_LENGTH), instructor);
      if (classes.add(founded)) {
        return founded;
      }
    }
  }
}
