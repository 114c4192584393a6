package withy.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Calls the same thing from many threads that start together. */
final class AtOnce {
  private AtOnce() {}

  static <T> List<T> call(int count, Callable<T> call) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(count);
    CountDownLatch start = new CountDownLatch(1);
    Callable<T> waiting =
        () -> {
          start.await();
          return call.call();
        };
    List<Future<T>> running = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      running.add(threads.submit(waiting));
    }
    start.countDown();
    List<T> outcomes = new ArrayList<>();
    for (Future<T> each : running) {
      outcomes.add(each.get());
    }
    threads.shutdown();
    return outcomes;
  }
}
