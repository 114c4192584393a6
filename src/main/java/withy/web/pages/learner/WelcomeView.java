package withy.web.pages.learner;

/** What a learner sees once after joining. */
public record WelcomeView(String nickname, String schoolClass, String returnCode) {}
