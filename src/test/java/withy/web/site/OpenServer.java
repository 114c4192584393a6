package withy.web.site;

import java.net.BindException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.core.item.ItemGenerator;
import withy.store.Store;
import withy.usecase.ItemSource;
import withy.usecase.School;
import withy.usecase.Secrets;
import withy.usecase.UseCases;
import withy.web.Assets;
import withy.web.Health;
import withy.web.Limits;
import withy.web.Metrics;
import withy.web.Route;
import withy.web.Server;
import withy.web.api.Api;
import withy.web.pages.PageRenderer;
import withy.wording.Wording;

/** The true server with pages and calls over a new database. */
final class OpenServer implements AutoCloseable {
  static final String NAME = "Jo Harker";
  static final String PASSWORD = "a withy in the mud";

  private final Store store;
  private final UseCases useCases;
  private final Server server;

  private OpenServer(Store store, ItemSource source, Clock clock) throws BindException {
    this.store = store;
    this.useCases =
        UseCases.over(
            store.ports(new WaterReader(), new DrillSetCatalogue()),
            School.CHEAP,
            clock,
            Secrets.secure(),
            source);
    this.server = Server.start("127.0.0.1", 0, parts(clock));
  }

  static OpenServer on(Path folder) throws BindException {
    return on(folder, ItemGenerator::item);
  }

  /** A server that asks items from a source. */
  static OpenServer on(Path folder, ItemSource source) throws BindException {
    return on(folder, source, Clock.systemUTC());
  }

  /** A server that goes by a clock of the test's. */
  static OpenServer on(Path folder, ItemSource source, Clock clock) throws BindException {
    return new OpenServer(Store.open(folder, clock), source, clock);
  }

  private Server.Parts parts(Clock clock) {
    Wording wording = Wording.of(Locale.ENGLISH);
    Limits limits = Limits.onSystemTime();
    Metrics metrics = new Metrics();
    Assets assets = new Assets();
    PageRenderer pages = new PageRenderer(wording, assets, ZoneOffset.UTC);
    List<Route> routes = new ArrayList<>(assets.routes());
    routes.addAll(new Site(pages, useCases, limits, metrics, clock).routes());
    routes.addAll(new Api(useCases, wording, limits, metrics).routes());
    return new Server.Parts(
        routes, useCases.signIn()::resume, clock, new Health(store::isAlive), metrics, pages);
  }

  /** Somebody who has not been here before. */
  Visitor visitor() {
    return new Visitor(server.port());
  }

  /** Somebody at the door of the server before it is set up. */
  Visitor firstInstructor() {
    Visitor instructor = visitor();
    instructor.get("/set-up");
    instructor.send(
        "main form", "code", useCases.setUp().code(), "name", NAME, "password", PASSWORD);
    return instructor;
  }

  /** The instructor at the list of classes, with a session of their own. */
  Visitor instructor() {
    if (useCases.setUp().needed()) {
      return firstInstructor();
    }
    Visitor instructor = visitor();
    instructor.get("/sign-in");
    instructor.send("main form", "name", NAME, "password", PASSWORD);
    return instructor;
  }

  @Override
  public void close() {
    server.stop();
    store.close();
  }
}
