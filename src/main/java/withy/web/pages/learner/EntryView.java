package withy.web.pages.learner;

/** The entry for learners, with what was typed. */
public record EntryView(String code, String nickname, String returnCode) {}
