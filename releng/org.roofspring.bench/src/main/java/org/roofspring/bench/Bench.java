package org.roofspring.bench;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Runs the benchmarks: all, or the groups named. Arguments: the top folder, a folder for files, then groups. */
public final class Bench {

    private Bench() {
    }

    /** One thing to measure. */
    interface Group {

        /** Checks, measures, and reports. */
        void run(Places places, Report report) throws Exception;
    }

    /**
     * Where things are.
     *
     * @param root top folder of the sources
     * @param work folder for files that are made on the way
     */
    record Places(Path root, Path work) {
    }

    /** Entry; see the class. */
    public static void main(String[] args) {
        Map<String, Group> groups = new LinkedHashMap<>();
        groups.put("storage", new StorageGroup());
        groups.put("rain", new RainGroup());
        groups.put("hydraulics", new HydraulicsGroup());
        List<String> wanted = args.length > 2 ? List.of(args).subList(2, args.length) : List.copyOf(groups.keySet());
        for (String name : wanted) {
            if (!groups.containsKey(name)) {
                System.err.println("There is no benchmark " + name + "; accepted are: "
                        + String.join(" ", groups.keySet()));
                System.exit(2);
            }
        }
        Report report = new Report();
        report.note("JDK " + System.getProperty("java.runtime.version") + ", " + System.getProperty("java.vm.name"));
        boolean sound = true;
        for (String name : wanted) {
            try {
                groups.get(name).run(new Places(Path.of(args[0]), Path.of(args[1])), report);
            } catch (Exception e) {
                sound = false;
                System.err.println("The benchmark " + name + " failed: " + e.getMessage());
            }
        }
        report.print();
        System.exit(sound ? 0 : 1);
    }
}
