package org.roofspring.site.io;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

import org.roofspring.site.internal.io.LocalDisk;

/** A real disk that calls out before each step of saving, and in the middle of each write. */
class StoppingDisk extends LocalDisk {
    /** Called with the number of the step, from 0; may never return, or refuse. */
    interface Stop {
        void at(int step, String what) throws IOException;
    }

    private final Stop stop;
    private int step;

    StoppingDisk(Stop stop) {
        this.stop = stop;
    }

    private void reach(String what) throws IOException {
        stop.at(step++, what);
    }

    @Override
    public byte[] read(Path file, int limit) throws IOException {
        reach("read");
        return super.read(file, limit);
    }

    @Override
    public Path create(Path folder, String prefix) throws IOException {
        reach("create");
        return super.create(folder, prefix);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        reach("write");
        super.write(file, Arrays.copyOf(bytes, bytes.length / 2));
        reach("half written");
        super.write(file, bytes);
    }

    @Override
    public void copyPermissions(Path model, Path file) throws IOException {
        reach("copyPermissions");
        super.copyPermissions(model, file);
    }

    @Override
    public void force(Path file) throws IOException {
        reach("force");
        super.force(file);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        reach("rename");
        super.rename(from, to);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        reach("replace");
        super.replace(from, to);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        reach("forceFolder");
        super.forceFolder(folder);
    }

    @Override
    public void deleteLeftovers(Path folder, String prefix) throws IOException {
        reach("deleteLeftovers");
        super.deleteLeftovers(folder, prefix);
    }
}
