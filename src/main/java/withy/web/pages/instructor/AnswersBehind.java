package withy.web.pages.instructor;

import java.time.Instant;
import withy.core.item.Form;
import withy.usecase.Behind;
import withy.web.pages.Address;

/** Where the responses stand behind the figures of a class: the address of each list. */
public record AnswersBehind(String schoolClass) {
  private Address list() {
    return Address.of("/classes/" + schoolClass + "/responses");
  }

  /** Of everybody on everything. */
  String all() {
    return list().toString();
  }

  /** Of everybody on a concept. */
  public String on(String concept) {
    return list().with("concept", concept).toString();
  }

  /** Of everybody on a concept, those that were not right. */
  String wrong(String concept) {
    return list().with("concept", concept).with("which", "wrong").toString();
  }

  /** The first of each learner on a concept. */
  String first(String concept) {
    return list().with("concept", concept).with("which", "first").toString();
  }

  /** Those to a concept that a belief led to. */
  String led(String concept, String misconception) {
    return list().with("concept", concept).with("misconception", misconception).toString();
  }

  /** Those that take one mark for another. */
  String taken(String shown, String answered) {
    return list()
        .with("form", Form.IDENTIFY.id())
        .with("key", shown)
        .with("option", answered)
        .toString();
  }

  /** Those that name a mark. */
  String about(String shown) {
    return list().with("form", Form.IDENTIFY.id()).with("key", shown).toString();
  }

  /** Of everybody to items of one kind, all or some of them. */
  public String kind(String form, String concept, Behind.Which which) {
    String only = which == Behind.Which.ALL ? "" : which.id();
    return list().with("concept", concept).with("form", form).with("which", only).toString();
  }

  /** Of everybody to items of one kind, those that a belief led to. */
  public String kindLed(String form, String concept, String misconception) {
    return list()
        .with("concept", concept)
        .with("form", form)
        .with("misconception", misconception)
        .toString();
  }

  /** The page of a kind of question. */
  public String kindPage(String form, String concept) {
    return "/classes/" + schoolClass + "/kinds/" + form + "/" + concept;
  }

  /** Of one learner. */
  String of(String learner) {
    return list().with("learner", learner).toString();
  }

  /** Of one learner on a concept. */
  String of(String learner, String concept) {
    return list().with("learner", learner).with("concept", concept).toString();
  }

  /** Of one learner on a concept, those that a belief led to. */
  String led(String learner, String concept, String misconception) {
    return list()
        .with("learner", learner)
        .with("concept", concept)
        .with("misconception", misconception)
        .toString();
  }

  /** The first of one learner on a concept. */
  String firstOf(String learner, String concept) {
    return list()
        .with("learner", learner)
        .with("concept", concept)
        .with("which", "first")
        .toString();
  }

  /** Of one learner, those that came too fast for the item to have been read. */
  String rapid(String learner) {
    return list().with("learner", learner).with("which", "rapid").toString();
  }

  /** To a drill. */
  String in(String drill) {
    return list().with("assignment", drill).toString();
  }

  /** To a drill, of one learner. */
  String in(String drill, String learner) {
    return list().with("learner", learner).with("assignment", drill).toString();
  }

  /** On a concept, from a moment on. */
  String since(String concept, Instant moment) {
    return list().with("concept", concept).with("since", moment.toString()).toString();
  }

  /** On a concept, before a moment. */
  String until(String concept, Instant moment) {
    return list().with("concept", concept).with("until", moment.toString()).toString();
  }

  /** The page of an item. */
  public String item(String item) {
    return "/classes/" + schoolClass + "/items/" + item;
  }
}
