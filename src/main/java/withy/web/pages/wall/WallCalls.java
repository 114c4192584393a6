package withy.web.pages.wall;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.waterway.Call;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Voyage;
import withy.wording.Wording;

/** What is said at each step of a voyage. */
final class WallCalls {
  private final Wording wording;

  WallCalls(Wording wording) {
    this.wording = wording;
  }

  /** At the beginning and at the end where she is; else the mark ahead, unless it is asked for. */
  CallView said(Stretch stretch, int step) {
    Voyage.Step at = stretch.voyage().steps().get(step);
    Call call = at.call();
    if (call == null) {
      return step == 0 ? begin(stretch) : new CallView(text("page.wall.end"), "");
    }
    if (stretch.untold().filter(call.mark()::equals).isPresent()) {
      return new CallView(text("page.wall.missing"), text("page.wall.missing-order"));
    }
    MarkCalls calls = marks(stretch);
    return new CallView(calls.name(call.mark()), calls.order(call));
  }

  /** The mark that is called at a step; null where none is, or it is asked for. */
  @Nullable Position ringed(Stretch stretch, int step) {
    Call call = stretch.voyage().steps().get(step).call();
    boolean asked = call != null && stretch.untold().filter(call.mark()::equals).isPresent();
    return call == null || asked ? null : call.mark().position();
  }

  private CallView begin(Stretch stretch) {
    return new CallView(
        switch (stretch.voyage().travel()) {
          case WITH -> text("page.wall.begin-in");
          case AGAINST -> text("page.wall.begin-out");
          case NONE -> text("page.wall.begin-round");
        },
        "");
  }

  /** A mark as it is called on this voyage; its name alone if she does not pass it. */
  CallView told(Stretch stretch, PlacedMark mark) {
    MarkCalls calls = marks(stretch);
    for (Call each : stretch.voyage().calls()) {
      if (each.mark().equals(mark)) {
        return new CallView(calls.name(mark), calls.order(each));
      }
    }
    return new CallView(calls.name(mark), "");
  }

  MarkCalls marks(Stretch stretch) {
    return new MarkCalls(wording, stretch.shown().practice(), stretch.shown().night());
  }

  private String text(String key) {
    return wording.text(key);
  }
}
