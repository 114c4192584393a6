package withy.core.mark;

/** The documents that the rules of marks are written in. */
final class Documents {
  private static final String SYSTEM = "IALA Recommendation R1001";
  private static final String SYSTEM_EDITION = "edition 1.1, June 2017";
  private static final String CATALOGUE = "IHO S-57 Appendix B.1 Annex A";
  private static final String CATALOGUE_EDITION = "edition 4.1.0, January 2018";
  private static final String FEDERAL = "33 CFR 62";
  private static final String CANADIAN = "Canadian Aids to Navigation System, TP 968";

  private Documents() {}

  /** The Maritime Buoyage System: its text was not at hand. */
  static Clause system(String section) {
    return Clause.remembered(SYSTEM, SYSTEM_EDITION, section);
  }

  /** The use of the object catalogue for charts, which tables every mark of the system. */
  static Clause catalogue(String section) {
    return Clause.read(CATALOGUE, CATALOGUE_EDITION, section);
  }

  /** The American Practical Navigator: its text was not at hand. */
  static Clause navigator(String chapter) {
    return Clause.remembered("American Practical Navigator (Bowditch)", "2002", chapter);
  }

  static Clause manual(String number, String page) {
    return Clause.read("NAVEDTRA " + number, "US Navy training manual", page);
  }

  static Clause federal(String section) {
    return Clause.read(FEDERAL, "Code of Federal Regulations", section);
  }

  static Clause federalFromMemory(String section) {
    return Clause.remembered(FEDERAL, "Code of Federal Regulations", section);
  }

  static Clause canadian(String section) {
    return Clause.read(CANADIAN, "2011 and 2023", section);
  }

  static Clause canadianFromMemory(String section) {
    return Clause.remembered(CANADIAN, "2011 and 2023", section);
  }
}
