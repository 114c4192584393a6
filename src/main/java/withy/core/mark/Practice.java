package withy.core.mark;

import withy.core.Term;

/** A national rule book on top of a region. */
public enum Practice implements Term {
  IALA_A(Region.A),
  IALA_B(Region.B),
  CANADA(Region.B),
  USA(Region.B);

  private final Region region;

  Practice(Region region) {
    this.region = region;
  }

  public Region region() {
    return region;
  }
}
