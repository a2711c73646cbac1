package org.roofspring.site.internal.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;

/** The disks of this computer. */
public class LocalDisk implements Disk {
    static final String TEMPORARY = ".tmp";
    private static final Duration ABANDONED = Duration.ofHours(1);

    @Override
    public byte[] read(Path file, int limit) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(limit);
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    @Override
    public Path create(Path folder, String prefix) throws IOException {
        return Files.createTempFile(folder, prefix, TEMPORARY);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
        }
    }

    @Override
    public void copyPermissions(Path model, Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        boolean exists = Files.exists(model);
        // an empty file made the ordinary way has the permissions that the person wants for new files
        Path like = exists ? model : Files.createFile(file.resolveSibling(file.getFileName() + TEMPORARY));
        try {
            view.setPermissions(Files.getPosixFilePermissions(like));
        } finally {
            if (!exists) {
                Files.delete(like);
            }
        }
    }

    @Override
    public void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Makes the rename last through a power cut; systems that cannot open a folder do it by themselves. */
    @Override
    public void forceFolder(Path folder) throws IOException {
        if (Files.getFileAttributeView(folder, PosixFileAttributeView.class) != null) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    @Override
    public void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public void deleteLeftovers(Path folder, String prefix) throws IOException {
        Instant limit = Instant.now().minus(ABANDONED);
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, entry -> isLeftover(folder, entry, prefix))) {
            for (Path entry : entries) {
                if (Files.getLastModifiedTime(entry).toInstant().isBefore(limit)) {
                    Files.deleteIfExists(entry);
                }
            }
        }
    }

    private static boolean isLeftover(Path folder, Path entry, String prefix) {
        String name = folder.relativize(entry).toString();
        return name.startsWith(prefix) && name.endsWith(TEMPORARY) && Files.isRegularFile(entry);
    }
}
