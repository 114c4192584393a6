package withy.usecase;

import java.util.UUID;
import withy.core.response.Response;

/**
 * A response as it is kept, with all that statistics need: they never draw an item again.
 *
 * @param id made by the learner's device
 * @param learner the learner's id; the response itself names the learner by nickname
 */
public record StoredResponse(UUID id, String learner, String schoolClass, Response response) {}
