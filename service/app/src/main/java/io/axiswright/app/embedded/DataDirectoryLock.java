package io.axiswright.app.embedded;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * One service at a time on a data directory. The operating system holds the lock for the process and drops it however
 * the process ends, so a file left behind never blocks; its content only tells who holds it.
 */
final class DataDirectoryLock implements AutoCloseable {

    private final FileChannel channel;

    private DataDirectoryLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the lock.
     *
     * @throws DataDirectoryInUse if another service, or another context of this process, holds it
     */
    static DataDirectoryLock take(Path directory) {
        Path file = directory.resolve("service.lock");
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (tryLock(channel) == null) {
                channel.close();
                throw new DataDirectoryInUse(directory, Files.readString(file).strip());
            }
            byte[] owner = Long.toString(ProcessHandle.current().pid()).getBytes(StandardCharsets.US_ASCII);
            channel.truncate(0).write(ByteBuffer.wrap(owner), 0);
            return new DataDirectoryLock(channel);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot lock " + file, e);
        }
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
