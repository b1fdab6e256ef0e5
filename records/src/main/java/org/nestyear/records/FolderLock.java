package org.nestyear.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Who uses the records of a folder, across programs: many may use them at once, and only when nobody does may one replace
 * them. The system gives a lock up when its program ends, however it ends.
 */
final class FolderLock {
    private static final String FILE_NAME = "nestyear.lock";
    private static final long USE = 0;
    private static final long UPDATE = 1;

    // One channel a folder and program: on POSIX systems the closing of any channel to a file gives up all its locks.
    private static final Map<Path, FolderLock> OPEN = new HashMap<>();

    private final FileChannel channel;
    private final FileLock lock;
    private int users;

    private FolderLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Marks the records as used until the answer is run.
     *
     * @return empty when somebody is replacing them just now
     */
    static Optional<Runnable> use(Path folder) {
        return hold(folder, true);
    }

    /**
     * Keeps everybody else off until the answer is run.
     *
     * @return empty when somebody uses them
     */
    static Optional<Runnable> alone(Path folder) {
        return hold(folder, false);
    }

    /** Does something with the records that only one program at a time may do; they must be held. */
    static <T> T inTurn(Path folder, Supplier<T> work) {
        synchronized (OPEN) {
            FolderLock held = OPEN.get(folder);
            if (held == null) {
                throw new IllegalStateException("the records of " + folder + " are not held");
            }
            try {
                FileLock turn = held.channel.lock(UPDATE, 1, false);
                try {
                    return work.get();
                } finally {
                    turn.release();
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static Optional<Runnable> hold(Path folder, boolean shared) {
        synchronized (OPEN) {
            FolderLock held = OPEN.get(folder);
            if (held != null) {
                return shared && held.lock.isShared() ? Optional.of(held.join(folder)) : Optional.empty();
            }
            try {
                FileChannel channel = FileChannel.open(
                        folder.resolve(FILE_NAME),
                        StandardOpenOption.CREATE,
                        StandardOpenOption.READ,
                        StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock(USE, 1, shared);
                if (lock == null) {
                    channel.close();
                    return Optional.empty();
                }
                FolderLock fresh = new FolderLock(channel, lock);
                OPEN.put(folder, fresh);
                return Optional.of(fresh.join(folder));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private Runnable join(Path folder) {
        users++;
        boolean[] left = {false};
        return () -> {
            synchronized (OPEN) {
                if (!left[0]) {
                    left[0] = true;
                    leave(folder);
                }
            }
        };
    }

    private void leave(Path folder) {
        users--;
        if (users == 0) {
            OPEN.remove(folder);
            try {
                channel.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
