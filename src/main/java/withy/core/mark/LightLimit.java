package withy.core.mark;

import withy.core.light.LightCharacter;

/** Which lights marks may show. */
@FunctionalInterface
public interface LightLimit {
  boolean allows(LightCharacter light);
}
