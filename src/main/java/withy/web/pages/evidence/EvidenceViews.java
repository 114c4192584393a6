package withy.web.pages.evidence;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.response.Response;
import withy.usecase.AskAgain;
import withy.usecase.Assignment;
import withy.usecase.Behind;
import withy.usecase.Evidence;
import withy.usecase.Learner;
import withy.usecase.SchoolClass;
import withy.usecase.ShowEvidence;
import withy.usecase.StoredResponse;
import withy.usecase.TalkOver;
import withy.web.pages.Days;
import withy.web.pages.PageRenderer;
import withy.web.pages.instructor.AnswersBehind;
import withy.web.pages.instructor.Phrases;
import withy.web.pages.instructor.Specimens;

/** Puts answers and the items they answer into words. */
final class EvidenceViews {
  private final Phrases phrases;
  private final Specimens specimens;
  private final Days days;

  EvidenceViews(PageRenderer pages) {
    this.phrases = new Phrases(pages.wording());
    this.specimens = new Specimens(pages.wording());
    this.days = pages.days();
  }

  /** Who and what is named by id in the address of a list; null where it is not. */
  record Named(@Nullable Learner learner, @Nullable Assignment drill) {}

  ResponsesView list(SchoolClass own, BehindAsked asked, Named named, ShowEvidence.Page page) {
    AnswersBehind links = new AnswersBehind(own.id());
    Evidence.Place older = page.older();
    return new ResponsesView(
        own.id(),
        own.name(),
        phrases.counted("responses.count", (int) page.all(), page.all()),
        about(own, asked.which(), named),
        page.rows().stream().map(each -> row(links, each)).toList(),
        asked.before() == null ? null : asked.address().toString(),
        older == null ? null : asked.from(older).toString());
  }

  private List<String> about(SchoolClass own, Behind which, Named named) {
    List<String> about = new ArrayList<>();
    if (named.learner() != null) {
      about.add(named.learner().nickname());
    }
    if (named.drill() != null) {
      about.add(phrases.title(named.drill()));
    }
    if (which.concept() != null) {
      about.add(phrases.concept(which.concept()));
    }
    if (which.form() != null) {
      about.add(phrases.name(Term.parse(Form.class, which.form())));
    }
    if (which.key() != null) {
      about.add(phrases.text("responses.key", value(own, which, which.key())));
    }
    if (which.option() != null) {
      about.add(phrases.text("responses.option", value(own, which, which.option())));
    }
    if (which.misconception() != null) {
      about.add(phrases.text("responses.belief", phrases.belief(which.misconception())));
    }
    if (which.which() != Behind.Which.ALL) {
      about.add(phrases.text("responses.which-" + which.which().id()));
    }
    if (which.since() != null) {
      about.add(phrases.text("responses.since", days.said(which.since())));
    }
    if (which.until() != null) {
      about.add(phrases.text("responses.until", days.said(which.until())));
    }
    return about;
  }

  /** A mark by its name; of other answers their own word. */
  private String value(SchoolClass own, Behind which, String value) {
    boolean mark = Form.IDENTIFY.id().equals(which.form());
    boolean known =
        own.practice().marks().stream().anyMatch(each -> each.kind().id().equals(value));
    return mark && known ? phrases.kind(own.practice(), value) : value.replace('-', ' ');
  }

  private ResponsesView.Row row(AnswersBehind links, StoredResponse stored) {
    Response response = stored.response();
    return new ResponsesView.Row(
        links.item(response.item()),
        phrases.name(Term.parse(Form.class, response.form())),
        phrases.concept(response.measured()),
        stored.learner(),
        response.learner(),
        said(response),
        response.rapid() ? phrases.text("responses.rapid") : null,
        response.correct(),
        days.said(response.answeredAt()));
  }

  private String said(Response response) {
    if (response.correct()) {
      return phrases.text("responses.right");
    }
    if (response.option() == null) {
      return phrases.text("responses.unsure");
    }
    String led = led(response);
    return led == null ? phrases.text("responses.wrong") : phrases.text("responses.wrong-by", led);
  }

  /** The belief that led to the answer, in words. */
  private @Nullable String led(@Nullable Response response) {
    String belief = response == null ? null : response.misconception();
    return belief == null || belief.equals(Misconception.UNEXPLAINED.id())
        ? null
        : phrases.belief(belief);
  }

  AskedView item(ShowEvidence.Asked asked) {
    Item item = asked.item();
    StoredResponse stored = asked.response();
    Response response = stored == null ? null : stored.response();
    String concept = asked.issue().concept().id();
    TalkOver.Asked alike = asked.alike();
    return new AskedView(
        asked.schoolClass().id(),
        asked.schoolClass().name(),
        asked.issue().id(),
        form(item, response),
        concept,
        phrases.concept(concept),
        asked.learner().id(),
        asked.learner().nickname(),
        item == null ? null : specimens.of(item),
        kind(asked, response),
        item != null && AskAgain.fits(item),
        response != null,
        response != null && response.correct(),
        answer(item, response),
        led(response),
        facts(asked, response),
        alike == null
            ? null
            : phrases.text("assignment.item-base", alike.right(), alike.answered()),
        alike == null ? List.of() : specimens.counts(alike));
  }

  private static @Nullable String kind(ShowEvidence.Asked asked, @Nullable Response response) {
    AnswersBehind links = new AnswersBehind(asked.schoolClass().id());
    String concept = asked.issue().concept().id();
    Item item = asked.item();
    if (item != null) {
      return links.kindPage(item.form().id(), concept);
    }
    return response == null ? null : links.kindPage(response.form(), concept);
  }

  private String form(@Nullable Item item, @Nullable Response response) {
    if (item != null) {
      return phrases.name(item.form());
    }
    return response == null
        ? phrases.text("evidence.item")
        : phrases.name(Term.parse(Form.class, response.form()));
  }

  private String answer(@Nullable Item item, @Nullable Response response) {
    if (response == null) {
      return phrases.text("evidence.unanswered");
    }
    if (response.option() == null) {
      return phrases.text("responses.unsure");
    }
    return item == null ? response.option() : specimens.answer(item, response.option());
  }

  private List<String> facts(ShowEvidence.Asked asked, @Nullable Response response) {
    List<String> facts = new ArrayList<>();
    if (response == null) {
      facts.add(phrases.text("evidence.issued", days.said(asked.issue().issuedAt())));
      return facts;
    }
    facts.add(phrases.text("evidence.answered", days.said(response.answeredAt())));
    facts.add(phrases.text("evidence.shown", phrases.decimal(response.shownMillis() / 1000.0)));
    if (response.rapid()) {
      facts.add(phrases.text("responses.rapid"));
    }
    if (asked.item() == null) {
      facts.add(phrases.text("evidence.key", response.key()));
    }
    return facts;
  }
}
