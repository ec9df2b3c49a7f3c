package io.github.leafproof.dsl.archive;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * Works on things by all processors and hands over the results in the order of the things. A parallel stream would do the
 * same and hold more and more of an archive whose length it does not know; here no more is held than is being worked on.
 */
final class InOrder<A, B> implements Iterator<B> {

    private static final int CHUNK = 64;

    /** As many chunks for each processor, so that none waits for the reader. */
    private static final int CHUNKS_AHEAD = 4;

    /** However large single things are, no more bytes of them wait in one chunk, and in all chunks together. */
    private static final int HEAVIEST_CHUNK = 1 << 20;

    private static final int HEAVIEST = 1 << 25;

    private final Iterator<A> things;
    private final Function<A, B> work;
    private final ToIntFunction<A> weight;
    private final int most;
    private final ExecutorService workers;
    private final Deque<Chunk<B>> ahead = new ArrayDeque<>();
    private long held;
    private Iterator<B> done = Collections.emptyIterator();

    /**
     * Begins no work before it is asked for.
     *
     * @param weight how much memory a thing takes while it waits, in bytes
     */
    InOrder(Iterator<A> things, Function<A, B> work, ToIntFunction<A> weight, int processors) {
        this.things = things;
        this.work = work;
        this.weight = weight;
        this.most = processors * CHUNKS_AHEAD;
        this.workers = Executors.newFixedThreadPool(processors, task -> {
            Thread thread = new Thread(task, "leafproof-archive");
            // A program that ends is not kept waiting for sheets that nobody asks for any more.
            thread.setDaemon(true);
            return thread;
        });
    }

    private record Chunk<B>(CompletableFuture<List<B>> results, long weight) {}

    @Override
    public boolean hasNext() {
        while (!done.hasNext()) {
            fill();
            if (ahead.isEmpty()) {
                close();
                return false;
            }
            Chunk<B> first = ahead.remove();
            done = results(first).iterator();
            held -= first.weight();
        }
        return true;
    }

    @Override
    public B next() {
        if (!hasNext()) {
            throw new NoSuchElementException("all is done");
        }
        return done.next();
    }

    private void fill() {
        while (ahead.size() < most && (ahead.isEmpty() || held < HEAVIEST) && things.hasNext()) {
            List<A> chunk = new ArrayList<>(CHUNK);
            long heavy = 0;
            do {
                A thing = things.next();
                chunk.add(thing);
                heavy += weight.applyAsInt(thing);
            } while (chunk.size() < CHUNK && heavy < HEAVIEST_CHUNK && things.hasNext());
            held += heavy;
            ahead.add(new Chunk<>(
                    CompletableFuture.supplyAsync(() -> chunk.stream().map(work).toList(), workers), heavy));
        }
    }

    /** What went wrong in a worker goes wrong here, as if it had been done here. */
    private static <B> List<B> results(Chunk<B> chunk) {
        try {
            return chunk.results().join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException bug) {
                throw bug;
            }
            if (failed.getCause() instanceof Error worse) {
                throw worse;
            }
            throw failed;
        }
    }

    void close() {
        workers.shutdownNow();
    }
}
