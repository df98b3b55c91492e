// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.Messages;
import spadework.office.files.CrashReports;

/** What broke where nobody expected it: what was typed is kept, a report is written, and both are told. */
final class CrashHandler implements Thread.UncaughtExceptionHandler {
    /** What breaks again and again is not reported again and again. */
    private static final int MOST = 3;

    private final BackgroundTasks files;
    private final Supplier<Path> folder;
    private final Runnable keep;
    private final Consumer<String> tell;
    private final AtomicInteger seen = new AtomicInteger();

    /**
     * Makes it.
     *
     * @param folder where reports go
     * @param keep keeps aside what is not saved, in every window
     * @param tell says it in the window
     */
    CrashHandler(BackgroundTasks files, Supplier<Path> folder, Runnable keep, Consumer<String> tell) {
        this.files = files;
        this.folder = folder;
        this.keep = keep;
        this.tell = tell;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable thrown) {
        if (seen.incrementAndGet() > MOST) {
            return;
        }
        String report = report(thread, thrown);
        SwingUtilities.invokeLater(() -> {
            keep.run();
            files.run(
                    () -> CrashReports.write(folder.get(), report),
                    file -> tell.accept(Messages.of("crash.said", file)),
                    unwritable -> tell.accept(Messages.of("crash.unwritten", FailureMessages.of(unwritable))));
        });
    }

    private static String report(Thread thread, Throwable thrown) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        out.println(Messages.of("crash.report"));
        out.println("Java " + System.getProperty("java.version") + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.version"));
        out.println("Thread " + thread.getName());
        thrown.printStackTrace(out);
        out.flush();
        return text.toString();
    }
}
