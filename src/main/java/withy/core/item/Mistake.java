package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Travel;

/**
 * Where a belief leads someone who meets a mark.
 *
 * @param form of the question that brings it to light
 * @param travel none where it does not matter
 * @param intent the channel wanted at a junction, else null
 * @param value of the wrong answer, a kind of mark where the form is {@link Form#IDENTIFY}
 */
public record Mistake(
    Misconception belief, Form form, Travel travel, @Nullable ChannelIntent intent, String value) {}
