package withy.web.pages.marks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import withy.web.Visit;
import withy.web.pages.Address;
import withy.web.pages.Link;
import withy.wording.Wording;

/**
 * How somebody wants marks shown; the address of the page holds all of it.
 *
 * @param torch whether the beam of a torch lies on them, so that sheeting shines back
 * @param wall whether they are shown on the wall of a room
 * @param still whether lights stand still
 */
record Showing(Sight sight, boolean torch, boolean wall, boolean still) {
  static Showing of(Visit visit) {
    return new Showing(
        Sight.read(asked(visit, "time")),
        asked(visit, "torch").equals("on"),
        asked(visit, "wall").equals("on"),
        asked(visit, "light").equals("still"));
  }

  private static String asked(Visit visit, String name) {
    String value = visit.context().queryParam(name);
    return value == null ? "" : value;
  }

  Showing seen(Sight other) {
    return new Showing(other, false, wall, still);
  }

  private Showing inTorch(boolean lit) {
    return new Showing(Sight.DAY, lit, wall, still);
  }

  private Showing onWall(boolean shown) {
    return new Showing(sight, torch, shown, still);
  }

  private Showing still(boolean held) {
    return new Showing(sight, torch, wall, held);
  }

  /** The address of a page that shows marks so. */
  String address(String path) {
    return Address.of(path)
        .with("time", sight == Sight.DAY ? "" : sight.id())
        .with("torch", torch ? "on" : "")
        .with("wall", wall ? "on" : "")
        .with("light", still ? "still" : "")
        .toString();
  }

  /** Day, from afar, night and the torch. */
  List<Link> sights(String path, Wording wording) {
    List<Link> links = new ArrayList<>();
    for (Sight each : Arrays.asList(Sight.values())) {
      String text = wording.text("mark-sight." + each.id());
      links.add(new Link(text, seen(each).address(path), each == sight && !torch));
    }
    links.add(new Link(wording.text("mark-sight.torch"), inTorch(true).address(path), torch));
    return links;
  }

  /** The switch of the lights, at night, and the way to the wall and back. */
  List<Link> switches(String path, Wording wording) {
    List<Link> links = new ArrayList<>();
    if (sight == Sight.NIGHT) {
      String text = wording.text(still ? "page.marks.start-lights" : "page.marks.stop-lights");
      links.add(Link.to(text, still(!still).address(path)));
    }
    String text = wording.text(wall ? "page.reference.leave-wall" : "page.reference.wall");
    links.add(Link.to(text, onWall(!wall).address(path)));
    return links;
  }
}
