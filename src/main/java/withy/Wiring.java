package withy;

import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import withy.store.Store;
import withy.usecase.UseCases;
import withy.web.Assets;
import withy.web.Health;
import withy.web.Limits;
import withy.web.Metrics;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.Server;
import withy.web.ServiceRoutes;
import withy.web.api.Api;
import withy.web.api.BackupApi;
import withy.web.pages.PageRenderer;
import withy.web.site.Site;
import withy.wording.Wording;

/**
 * Puts the parts of the server together: first what needs no database, then the rest, so that the
 * one can be made ready while the other is being opened.
 */
final class Wiring {
  private final Clock clock;
  private final Limits limits;
  private final Wording wording = Wording.of(Locale.ENGLISH);
  private final Assets assets = new Assets();
  private final Metrics metrics = new Metrics();
  private final PageRenderer pages = new PageRenderer(wording, assets, ZoneId.systemDefault());

  Wiring(Clock clock, Limits limits) {
    this.clock = clock;
    this.limits = limits;
  }

  /** All that the server serves, over the use cases and what is kept in a store. */
  Server.Parts parts(UseCases useCases, Store store) {
    Health health = new Health(store::isAlive);
    List<RouteGroup> groups =
        List.of(
            new ServiceRoutes(health, metrics),
            assets,
            new Site(pages, useCases, limits, metrics, clock),
            new Api(useCases, wording, limits, metrics),
            new BackupApi(store.backupOffice()));
    return new Server.Parts(
        routes(groups), useCases.signIn()::resume, clock, health, metrics, pages);
  }

  private static List<Route> routes(List<RouteGroup> groups) {
    List<Route> routes = new ArrayList<>();
    groups.forEach(group -> routes.addAll(group.routes()));
    return routes;
  }
}
