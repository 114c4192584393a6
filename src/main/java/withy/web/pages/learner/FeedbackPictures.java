package withy.web.pages.learner;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.item.Assembly;
import withy.core.item.Choice;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.item.Passage;
import withy.core.item.Quantity;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.View;
import withy.drawing.Svg;
import withy.web.pages.ItemPictures;
import withy.wording.Wording;

/** The pictures that show what came of an answer, each with its caption. */
final class FeedbackPictures {
  private final Wording wording;
  private final ItemPictures pictures;
  private final AnswerViews answers;

  FeedbackPictures(Wording wording, ItemPictures pictures, AnswerViews answers) {
    this.wording = wording;
    this.pictures = pictures;
    this.answers = answers;
  }

  /**
   * What was seen, or put together; then the ways past it, or the mark that it was taken for.
   *
   * @param chosen null for "not sure"
   */
  List<Shown> of(Item item, @Nullable String chosen) {
    if (item.answer() instanceof Assembly assembly) {
      return marks(assembly, chosen);
    }
    if (item.answer() instanceof Passage) {
      return passage(item, chosen);
    }
    String value = item.answer() instanceof Quantity ? null : chosen;
    boolean wrong = value != null && !value.equals(item.key());
    List<Shown> shown = new ArrayList<>();
    if (!ItemPictures.isChart(item)) {
      shown.add(Shown.of(wording.text(seen(item)), pictures.seen(item)));
    }
    pictures
        .ways(item, value)
        .ifPresent(plan -> shown.add(plan(item, wording.text(ways(item, wrong)), plan)));
    shown.addAll(lights(item, value));
    if (wrong && value != null) {
      String named = wording.text("page.feedback.named", answers.said(item, value));
      boolean strip = item.scenario().situation().view() == View.LIGHT;
      pictures
          .takenFor(item, value)
          .map(svg -> strip ? Shown.strip(named, svg) : Shown.of(named, svg))
          .ifPresent(shown::add);
    }
    return shown;
  }

  private static Shown plan(Item item, String caption, Svg plan) {
    return item.scenario().sailing() == null ? Shown.of(caption, plan) : Shown.chart(caption, plan);
  }

  private static String seen(Item item) {
    if (item.scenario().lookout() instanceof RangeLookout range) {
      return range.visibility() == null ? "page.feedback.horizon" : "page.feedback.luminous-ranges";
    }
    if (item.scenario().lookout() != null) {
      return "page.feedback.sectors";
    }
    if (ItemPictures.asks(item, LightQuestion.RHYTHM)) {
      return "page.feedback.charted";
    }
    return switch (item.form()) {
      case DIRECTION -> "page.feedback.angle";
      case NUMBER -> "page.feedback.channel";
      default -> "page.feedback.mark";
    };
  }

  /** The light that is right and the one that was chosen, where options stand for lights. */
  private List<Shown> lights(Item item, @Nullable String chosen) {
    List<Shown> shown = new ArrayList<>();
    if (item.answer() instanceof Choice && chosen != null && !chosen.equals(item.key())) {
      light(item, item.key(), "page.feedback.right-light").ifPresent(shown::add);
      light(item, chosen, "page.feedback.chosen-light").ifPresent(shown::add);
    }
    return shown;
  }

  private Optional<Shown> light(Item item, String value, String caption) {
    return item.options().stream()
        .filter(each -> each.value().equals(value) && each.rhythm() != null)
        .findFirst()
        .flatMap(each -> pictures.strip(item, each).map(svg -> strip(caption, each, svg)));
  }

  private Shown strip(String caption, Option option, Svg svg) {
    String light = Objects.requireNonNull(option.rhythm()).shortNotation();
    return Shown.strip(wording.text(caption, light), svg);
  }

  private List<Shown> passage(Item item, @Nullable String chosen) {
    boolean wrong = chosen != null && !chosen.equals(item.key());
    String caption = wrong ? "page.feedback.passage-both" : "page.feedback.passage-track";
    return pictures
        .ways(item, chosen)
        .map(chart -> List.of(Shown.chart(wording.text(caption), chart)))
        .orElse(List.of());
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
        .ifPresent(mark -> shown.add(Shown.of(wording.text(caption), pictures.mark(mark))));
  }

  private static String ways(Item item, boolean wrong) {
    if (item.scenario().sailing() != null && item.answer() instanceof Quantity) {
      return "page.feedback.measured";
    }
    if (item.scenario().sailing() != null) {
      return wrong ? "page.feedback.both-tracks" : "page.feedback.track";
    }
    if (item.form() == Form.CHANNEL_CHOICE) {
      return wrong ? "page.feedback.both-ways-junction" : "page.feedback.way-junction";
    }
    if (item.form() == Form.LEADING) {
      return wrong ? "page.feedback.both-ways-line" : "page.feedback.way-line";
    }
    return wrong ? "page.feedback.both-ways" : "page.feedback.way";
  }
}
