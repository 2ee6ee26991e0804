package org.bondspan.viewer.plan;

import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** Does one thing after the other on a thread of its own; what waits is dropped when something newer comes. */
final class Latest implements Executor {
    private final AtomicReference<@Nullable Runnable> waiting = new AtomicReference<>();
    private final ThreadPoolExecutor thread;

    Latest(String name) {
        this.thread = new ThreadPoolExecutor(1, 1, 2, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), task -> {
            Thread made = new Thread(task, name);
            made.setDaemon(true);
            return made;
        });
        thread.allowCoreThreadTimeOut(true);
    }

    @Override
    public void execute(Runnable task) {
        if (waiting.getAndSet(task) == null) {
            thread.execute(this::next);
        }
    }

    private void next() {
        Runnable task = waiting.getAndSet(null);
        if (task != null) {
            task.run();
        }
    }
}
