package withy;

import java.io.PrintWriter;
import java.net.BindException;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import withy.catalogue.DemoClassReader;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.store.Store;
import withy.store.StoreRefused;
import withy.usecase.DemoClass;
import withy.usecase.Passwords;
import withy.usecase.Ports;
import withy.usecase.Refused;
import withy.usecase.SchoolClass;
import withy.usecase.Secrets;
import withy.usecase.UseCases;
import withy.web.LanAddresses;
import withy.web.Limits;
import withy.web.Server;
import withy.wording.Wording;

/** Runs the server until it is told to stop; then finishes what it has begun. */
@Command(
    name = "serve",
    description = "Runs the server.",
    mixinStandardHelpOptions = true,
    sortOptions = false)
final class ServeCommand implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65535;

  @Spec private @Nullable CommandSpec spec;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      defaultValue = "7070",
      description = "Port to listen on, 0 for any that is free; ${DEFAULT-VALUE} unless given.")
  private int port;

  @Option(
      names = "--host",
      paramLabel = "HOST",
      defaultValue = "0.0.0.0",
      description = "Address to listen on; all of this machine unless given.")
  private String host = "";

  @Option(
      names = "--data",
      paramLabel = "DIR",
      defaultValue = "withy-data",
      description = "Folder of the database; ${DEFAULT-VALUE} unless given.")
  private Path data = Path.of("");

  @Option(names = "--demo", description = "Adds an invented class to an empty database.")
  private boolean demo;

  private final Wording wording = Wording.of(Locale.ENGLISH);

  @Override
  public Integer call() throws InterruptedException {
    requireArguments();
    Clock clock = Clock.systemUTC();
    LoggerFactory.getILoggerFactory(); // before two threads ask for it at the same time
    CompletableFuture<Store> opening = CompletableFuture.supplyAsync(() -> Store.open(data, clock));
    Wiring wiring = new Wiring(clock, Limits.onSystemTime());
    Server.warmUp();
    try {
      return serve(opening.get(), wiring, clock);
    } catch (ExecutionException failed) {
      return fail(sentence(failed));
    }
  }

  private static String sentence(ExecutionException failed) {
    if (failed.getCause() instanceof StoreRefused refused) {
      return refused.sentence(Locale.ENGLISH);
    }
    throw new IllegalStateException(failed);
  }

  private void requireArguments() {
    if (port < 0 || port > HIGHEST_PORT) {
      throw bad("serve.no-port", Integer.toString(port));
    }
    try {
      InetAddress.getByName(host);
    } catch (UnknownHostException unknown) {
      throw bad("serve.no-host", host);
    }
  }

  private int serve(Store store, Wiring wiring, Clock clock) throws InterruptedException {
    Ports ports = store.ports(new WaterReader(), new DrillSetCatalogue());
    Passwords passwords = Passwords.argon2id();
    UseCases useCases = UseCases.over(ports, passwords, clock, Secrets.secure());
    SchoolClass demoClass = demo ? demoClass(ports, passwords, clock) : null;
    try {
      Server server = Server.start(host, port, wiring.parts(useCases, store));
      Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(server, store), "stop"));
      store.backupOffice().announce(URI.create("http://" + nearHost() + ":" + server.port()));
      tell(useCases, demoClass, server.port());
    } catch (BindException inUse) {
      store.close();
      return fail(wording.text("serve.port-in-use", host, Integer.toString(port)));
    }
    new CountDownLatch(1).await();
    return CommandLine.ExitCode.OK;
  }

  /** The address as this machine reaches it. */
  private String nearHost() {
    return LanAddresses.isAny(host) ? "127.0.0.1" : host;
  }

  /** The invented class, where there was nothing; elsewhere nothing is added to what people did. */
  private @Nullable SchoolClass demoClass(Ports ports, Passwords passwords, Clock clock) {
    try {
      return new DemoClass(ports, passwords, clock, Secrets.secure(), DemoClassReader.read())
          .fill();
    } catch (Refused notEmpty) {
      spec().commandLine().getErr().println(wording.text("serve.no-demo"));
      return null;
    }
  }

  private void tell(UseCases useCases, @Nullable SchoolClass demoClass, int boundPort) {
    PrintWriter out = spec().commandLine().getOut();
    if (useCases.setUp().needed()) {
      out.println("set-up code: " + useCases.setUp().code());
    }
    if (demoClass != null) {
      out.println("class code: " + demoClass.code());
    }
    List<String> urls = LanAddresses.toOpen(host, boundPort);
    urls.forEach(url -> out.println("open " + url));
    if (useCases.setUp().needed()) {
      String own = urls.get(urls.size() - 1); // of this machine, where the instructor sits
      out.println("open " + own + "/set-up?code=" + useCases.setUp().code());
    }
    out.println("listening on http://" + host + ":" + boundPort);
    out.flush();
  }

  /**
   * Runs while the machine that runs this program exits. It ends the process itself, since a
   * process that was asked to stop and did so in order has not failed.
   */
  private static void stop(Server server, Store store) {
    try {
      server.stop();
    } finally {
      store.close();
    }
    Runtime.getRuntime().halt(CommandLine.ExitCode.OK);
  }

  private int fail(String sentence) {
    spec().commandLine().getErr().println(sentence.replaceAll("\\R", " "));
    return CommandLine.ExitCode.SOFTWARE;
  }

  private ParameterException bad(String key, String value) {
    return new ParameterException(spec().commandLine(), wording.text(key, value));
  }

  private CommandSpec spec() {
    return java.util.Objects.requireNonNull(spec);
  }
}
