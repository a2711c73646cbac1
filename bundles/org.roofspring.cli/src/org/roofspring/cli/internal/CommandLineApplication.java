package org.roofspring.cli.internal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.cli.RoofspringCommandLine;

/** Runs the command line inside the framework and hands its exit status to the launcher. */
public final class CommandLineApplication implements IApplication {
    private static final long SERVICE_WAIT_MS = 10_000;

    @Override
    public Object start(IApplicationContext context) throws Exception {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        BundleContext bundles = FrameworkUtil.getBundle(CommandLineApplication.class).getBundleContext();
        ServiceTracker<CalculationRegistry, CalculationRegistry> tracker = new ServiceTracker<>(bundles, CalculationRegistry.class, null);
        tracker.open();
        // whatever a library prints goes to standard error: standard output is the answer alone
        PrintStream answer = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        System.setOut(System.err);
        try {
            CalculationRegistry registry = tracker.waitForService(SERVICE_WAIT_MS);
            if (registry == null) {
                System.err.println("The calculation engine did not start; the installation is incomplete.");
                return Failures.INTERNAL;
            }
            PrintWriter out = new PrintWriter(new OutputStreamWriter(answer, StandardCharsets.UTF_8));
            PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
            int status = new RoofspringCommandLine(registry).run(arguments, out, err);
            return answer.checkError() ? Failures.INTERNAL : status;
        } finally {
            tracker.close();
        }
    }

    @Override
    public void stop() {
        // a command has nothing to save; the framework ends it
    }
}
