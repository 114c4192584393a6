package withy.web.pages.wall;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.usecase.AskAgain;
import withy.usecase.AskAgain.Change;
import withy.usecase.Assignment;
import withy.usecase.PutToRoom;
import withy.usecase.PutToRoom.Room;
import withy.usecase.PutToRoom.Wanted;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.UseCases;
import withy.web.Json;
import withy.web.Role;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Visit;
import withy.web.pages.Form;
import withy.web.pages.PageRenderer;

/** The pages on which an instructor puts an item to a class in its room, and shows the answers. */
final class RoomPages implements RouteGroup {
  private static final int OK = 200;
  private static final String QUESTION = "question";

  private final PageRenderer pages;
  private final PutToRoom rooms;
  private final AskAgain again;
  private final WallPages wall;
  private final RoomForms forms;
  private final RoomViews views;

  RoomPages(PageRenderer pages, UseCases useCases, WallPages wall) {
    this.pages = pages;
    this.rooms = useCases.putToRoom();
    this.again = useCases.askAgain();
    this.wall = wall;
    this.forms = new RoomForms(pages.wording());
    this.views = new RoomViews(pages.wording());
  }

  @Override
  public List<Route> routes() {
    String room = Shown.PATH + "/room";
    return List.of(
        Route.post(room, Role.INSTRUCTOR, this::put),
        Route.post(Shown.PATH + "/again", Role.INSTRUCTOR, this::putAgain),
        Route.get(room + "/{id}", Role.INSTRUCTOR, this::show),
        Route.get(room + "/{id}/count", Role.INSTRUCTOR, this::count),
        Route.post(room + "/{id}/reveal", Role.INSTRUCTOR, this::reveal),
        Route.post(room + "/{id}/like", Role.INSTRUCTOR, this::putLike));
  }

  private void put(Visit visit) {
    Stretch stretch = wall.stretch(visit);
    Form form = Form.of(visit);
    String question = form.text(QUESTION);
    Optional<Wanted> wanted = forms.wanted(stretch, question);
    try {
      if (wanted.isPresent()) {
        Assignment put =
            rooms.put(visit.instructor(), form.text("class"), forms::title, wanted.get());
        visit.goTo(stretch.shown().address(Shown.PATH + "/room/" + put.id()).toString());
        return;
      }
      form.refuse(QUESTION, text("page.wall.ask-missing"));
    } catch (Refused refused) {
      refuse(form, refused);
    }
    wall.showAgain(visit, stretch, form.problems());
  }

  /** An item that a learner was given, from the pages of the review. */
  private void putAgain(Visit visit) {
    String item = Form.of(visit).text("item");
    Assignment put = again.put(visit.instructor(), item, forms::title);
    visit.goTo(Shown.PATH + "/room/" + put.id());
  }

  private void putLike(Visit visit) {
    String id = visit.context().pathParam("id");
    Assignment put = again.putLike(visit.instructor(), id, forms::title);
    visit.goTo(Shown.of(visit).address(Shown.PATH + "/room/" + put.id()).toString());
  }

  private void refuse(Form form, Refused refused) {
    if (refused.reason() == Reason.UNKNOWN_CLASS) {
      form.refuse("class", text("page.wall.class-missing"));
    } else if (refused.reason() == Reason.NOTHING_TO_DRILL) {
      form.refuse(QUESTION, text("page.wall.ask-nothing"));
    } else {
      throw refused;
    }
  }

  private Room room(Visit visit) {
    return rooms.room(visit.instructor(), visit.context().pathParam("id"));
  }

  private void show(Visit visit) {
    Room room = room(visit);
    @Nullable Change change = room.isRevealed() ? again.change(visit.instructor(), room) : null;
    RoomView view = views.view(room, Shown.of(visit), change);
    pages.show(visit, "wall/room", text("page.wall.room-title"), view);
  }

  private void count(Visit visit) {
    Room room = room(visit);
    Json.answer(visit.context(), OK, new Count(views.answered(room), room.isRevealed()));
  }

  private void reveal(Visit visit) {
    String id = visit.context().pathParam("id");
    rooms.reveal(visit.instructor(), id);
    visit.goTo(Shown.of(visit).address(Shown.PATH + "/room/" + id).toString());
  }

  private String text(String key) {
    return pages.wording().text(key);
  }
}
