package withy;

import java.net.BindException;
import java.nio.file.Path;
import java.time.Clock;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.core.item.ItemGenerator;
import withy.store.Store;
import withy.usecase.ItemSource;
import withy.usecase.Passwords;
import withy.usecase.Secrets;
import withy.usecase.UseCases;
import withy.web.Limits;
import withy.web.Server;

/** The whole server in this process, so that a test can look behind what people are shown. */
public final class InProcessServer implements AutoCloseable {
  private final Store store;
  private final UseCases useCases;
  private final Server server;

  private InProcessServer(Store store, UseCases useCases, Server server) {
    this.store = store;
    this.useCases = useCases;
    this.server = server;
  }

  /** Starts it on a data folder and a free port. */
  public static InProcessServer on(Path data) throws BindException {
    return on(data, ItemGenerator::item);
  }

  /** Starts it with items from a source. */
  public static InProcessServer on(Path data, ItemSource source) throws BindException {
    Clock clock = Clock.systemUTC();
    Store store = Store.open(data, clock);
    UseCases useCases =
        UseCases.over(
            store.ports(new WaterReader(), new DrillSetCatalogue()),
            Passwords.argon2id(),
            clock,
            Secrets.secure(),
            source);
    Server server =
        Server.start(
            "127.0.0.1", 0, new Wiring(clock, Limits.onSystemTime()).parts(useCases, store));
    return new InProcessServer(store, useCases, server);
  }

  public UseCases useCases() {
    return useCases;
  }

  public int port() {
    return server.port();
  }

  @Override
  public void close() {
    server.stop();
    store.close();
  }
}
