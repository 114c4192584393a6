package withy.usecase;

import withy.core.item.Option;

/** An option and the token that stands for it where a learner must not know what it is. */
public record OpaqueOption(String token, Option option) {}
