package withy.core.light;

/** Stands in until the whole package lands; on a conflict take the incoming whole package. */
public record LightCharacter(String notation) {}
