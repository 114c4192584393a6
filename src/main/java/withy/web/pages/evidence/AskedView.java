package withy.web.pages.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.web.pages.instructor.Specimen;

/**
 * An item as a learner was asked it.
 *
 * @param specimen the item drawn again; null where that cannot be had any more
 * @param kind the address of the page of its kind; null where its form is not known
 * @param forRoom whether it can be put to the whole class
 * @param said what the learner answered
 * @param led the belief that leads there; null where none is known
 * @param others the counts of all answers where everybody was asked the same; empty elsewhere
 * @param othersBase how many of them were right; null elsewhere
 */
public record AskedView(
    String schoolClass,
    String className,
    String id,
    String form,
    String concept,
    String conceptName,
    String learner,
    String nickname,
    @Nullable Specimen specimen,
    @Nullable String kind,
    boolean forRoom,
    boolean answered,
    boolean right,
    String said,
    @Nullable String led,
    List<String> facts,
    @Nullable String othersBase,
    List<String> others) {}
