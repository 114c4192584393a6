package withy.web.pages.learner;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Assembly;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Quantity;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.usecase.Feedback;
import withy.usecase.IssuedItem;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.OpaqueOption;
import withy.usecase.OwnStanding.Standing;
import withy.usecase.OwnStanding.State;
import withy.web.pages.ItemPictures;
import withy.web.pages.PageRenderer;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Puts drills, items and feedback into words and pictures. */
final class DrillViews {
  private final PageRenderer pages;
  private final Wording wording;
  private final ItemWording items;
  private final ItemPictures pictures;
  private final AnswerViews answers;
  private final FurtherReading reading;

  DrillViews(PageRenderer pages) {
    this.pages = pages;
    this.wording = pages.wording();
    this.items = new ItemWording(wording);
    this.pictures = new ItemPictures(wording);
    this.answers = new AnswerViews(wording, pictures);
    this.reading = new FurtherReading(wording);
  }

  DrillsView drills(
      String schoolClass, List<OwnAssignment> drills, List<Standing> standing, Instant now) {
    List<DrillRow> rows = drills.stream().map(each -> row(each, now)).toList();
    return new DrillsView(schoolClass, rows, groups(standing));
  }

  private DrillRow row(OwnAssignment drill, Instant now) {
    int left = drill.length() - drill.answered();
    String rest = left == 0 ? wording.text("page.drills.done") : text("left", left, drill.length());
    return new DrillRow(drill.id(), title(drill), rest, due(drill, left, now));
  }

  private @Nullable String due(OwnAssignment drill, int left, Instant now) {
    Instant due = drill.due();
    if (due == null || left == 0) {
      return null;
    }
    return text(due.isBefore(now) ? "over" : "due", pages.days().said(due));
  }

  ItemView item(
      OwnAssignment drill,
      IssuedItem issued,
      String responseId,
      long now,
      boolean still,
      TypedAnswer typed) {
    Item item = issued.item();
    return new ItemView(
        drill.id(),
        title(drill),
        place(drill, issued),
        issued.id(),
        responseId,
        now,
        pictures.asked(item),
        isFlashing(item),
        still,
        items.prompt(item),
        items.facts(item),
        issued.options().stream().map(each -> choice(issued.item(), each)).toList(),
        answers.number(item, typed),
        answers.slots(issued, typed),
        typed.isUnsure());
  }

  private Choice choice(Item item, OpaqueOption offered) {
    return new Choice(
        offered.token(),
        items.option(offered.option()),
        pictures.option(item, offered.option()).orElse(null));
  }

  /** Whether there is a light in the picture that can be stopped. */
  private static boolean isFlashing(Item item) {
    return item.scenario().situation().view() == View.LIGHT
        && item.scenario().question() != LightQuestion.RHYTHM
        && !ofLightAshore(item)
        && !(item.answer() instanceof Assembly);
  }

  FeedbackView feedback(OwnAssignment drill, Feedback feedback) {
    Item item = feedback.issued().item();
    String chosen = feedback.chosen();
    return new FeedbackView(
        drill.id(),
        title(drill),
        place(drill, feedback.issued()),
        chosen != null,
        feedback.correct(),
        verdict(feedback),
        item.scenario().situation().time() == TimeOfDay.NIGHT && !ofLightAshore(item),
        chosen == null ? wording.text("page.item.not-sure") : answers.said(item, chosen),
        !feedback.correct() || item.answer() instanceof Quantity,
        wording.text(keyLabel(item)),
        answers.key(item),
        answers.parts(item, chosen),
        shown(item, chosen),
        items.facts(item),
        wording.text(feedback.explanation()),
        feedback.mistook() == null ? null : wording.text(feedback.mistook()),
        reading.of(item, chosen));
  }

  private String verdict(Feedback feedback) {
    if (feedback.chosen() == null) {
      return wording.text("page.feedback.unsure");
    }
    return wording.text("page.feedback." + (feedback.correct() ? "right" : "wrong"));
  }

  private List<Shown> shown(Item item, @Nullable String chosen) {
    if (item.answer() instanceof Assembly assembly) {
      return marks(assembly, chosen);
    }
    String value = item.answer() instanceof Quantity ? null : chosen;
    boolean wrong = value != null && !value.equals(item.key());
    List<Shown> shown = new ArrayList<>();
    shown.add(new Shown(wording.text(seen(item)), pictures.seen(item)));
    pictures
        .ways(item, value)
        .ifPresent(plan -> shown.add(new Shown(wording.text(ways(item, wrong)), plan)));
    if (wrong && value != null) {
      String named = wording.text("page.feedback.named", answers.said(item, value));
      pictures.takenFor(item, value).ifPresent(svg -> shown.add(new Shown(named, svg)));
    }
    return shown;
  }

  /** Its picture is a diagram on paper, though it is asked at night. */
  private static boolean ofLightAshore(Item item) {
    return item.scenario().lookout() != null;
  }

  private static String seen(Item item) {
    if (item.scenario().lookout() instanceof RangeLookout range) {
      return range.visibility() == null ? "page.feedback.horizon" : "page.feedback.luminous-ranges";
    }
    if (ofLightAshore(item)) {
      return "page.feedback.sectors";
    }
    return switch (item.form()) {
      case DIRECTION -> "page.feedback.angle";
      case NUMBER -> "page.feedback.channel";
      default -> "page.feedback.mark";
    };
  }

  /** The mark as it was put together, if it was not right, and the right one. */
  private List<Shown> marks(Assembly assembly, @Nullable String chosen) {
    List<Shown> shown = new ArrayList<>();
    if (chosen != null && !chosen.equals(assembly.key())) {
      shown(shown, "page.feedback.assembled", assembly, chosen);
    }
    shown(shown, "page.feedback.right-mark", assembly, assembly.key());
    return shown;
  }

  private void shown(List<Shown> shown, String caption, Assembly assembly, String given) {
    assembly
        .appearance(given)
        .ifPresent(mark -> shown.add(new Shown(wording.text(caption), pictures.mark(mark))));
  }

  private static String ways(Item item, boolean wrong) {
    if (item.form() == Form.CHANNEL_CHOICE) {
      return wrong ? "page.feedback.both-ways-junction" : "page.feedback.way-junction";
    }
    if (item.form() == Form.LEADING) {
      return wrong ? "page.feedback.both-ways-line" : "page.feedback.way-line";
    }
    return wrong ? "page.feedback.both-ways" : "page.feedback.way";
  }

  private static String keyLabel(Item item) {
    if (item.answer() instanceof Quantity) {
      return "page.feedback.works-out";
    }
    return switch (item.form()) {
      case SIDE, CHANNEL_CHOICE, CARDINAL_PASS -> "page.feedback.safe";
      default -> "page.feedback.key";
    };
  }

  EndView end(OwnAssignment drill, List<Standing> standing) {
    String sentence = wording.text("page.end.sentence", title(drill), drill.length());
    return new EndView(sentence, groups(standing));
  }

  private List<StandingGroup> groups(List<Standing> standing) {
    List<StandingGroup> groups = new ArrayList<>();
    for (State state : State.values()) {
      List<String> concepts =
          standing.stream()
              .filter(each -> each.state() == state)
              .map(each -> wording.name(each.concept()))
              .toList();
      if (!concepts.isEmpty()) {
        String key = "page.standing." + state.id();
        groups.add(new StandingGroup(wording.text(key), wording.text(key + "-note"), concepts));
      }
    }
    return groups;
  }

  private String place(OwnAssignment drill, IssuedItem issued) {
    return wording.text("page.item.place", issued.position() + 1, drill.length());
  }

  private String title(OwnAssignment drill) {
    return drill.title().isEmpty() ? wording.text("page.drills.untitled") : drill.title();
  }

  private String text(String key, Object... arguments) {
    return wording.text("page.drills." + key, arguments);
  }
}
