// SPDX-License-Identifier: Apache-2.0
package spadework.press.template;

import freemarker.core._CoreAPI;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/**
 * How much time, memory and text one filling of a template may take. A paper takes a fraction of a second and some
 * megabytes; a loop without an end is told and does not stop the program.
 */
final class FillBudget {
    private static final int SECONDS = Integer.getInteger("spadework.templateSeconds", 20);
    private static final int MOST_TEXT = 64 * 1024 * 1024;
    private static final long MOST_MEMORY = 2L << 30;
    private static final int LOOK_MILLIS = 20;

    private static final com.sun.management.ThreadMXBean MEMORY =
            ManagementFactory.getThreadMXBean() instanceof com.sun.management.ThreadMXBean bean ? bean : null;
    private static final ScheduledExecutorService WATCH = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread watch = new Thread(work, "template-budget");
        watch.setDaemon(true);
        return watch;
    });

    private FillBudget() {}

    /** A template took more than it may. */
    static final class Overspent extends IOException {
        private static final long serialVersionUID = 1L;

        private Overspent(String what) {
            super("it " + what + "; look for a loop or a macro that does not end");
        }
    }

    /**
     * Fills the template.
     *
     * @param own whether it may be one of the contractor's own, whose time and memory are watched as well
     * @throws Overspent if it takes too much
     */
    static String spend(Template template, Map<String, Object> model, boolean own)
            throws IOException, TemplateException {
        return own ? watched(template, model) : filled(template, model);
    }

    /** Has the library look at its thread between the steps of a template, so that filling it can be broken off. */
    static void watched(Template template) {
        _CoreAPI.addThreadInterruptedChecks(template);
    }

    private static String filled(Template template, Map<String, Object> model) throws IOException, TemplateException {
        StringWriter filled = new StringWriter();
        template.process(model, new Bounded(filled));
        return filled.toString();
    }

    private static String watched(Template template, Map<String, Object> model) throws IOException, TemplateException {
        Thread filling = Thread.currentThread();
        Watch watch = new Watch(filling);
        ScheduledFuture<?> looks = WATCH.scheduleAtFixedRate(watch, LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
        try {
            return filled(template, model);
        } catch (TemplateException | RuntimeException broken) {
            if (watch.overspent() != null) {
                throw new Overspent(watch.overspent());
            }
            throw broken;
        } finally {
            looks.cancel(false);
            watch.end();
        }
    }

    /** Breaks the filling off once it takes too long or too much. */
    private static final class Watch implements Runnable {
        private final Thread filling;
        private final long begun = System.nanoTime();
        private final long before;
        private String overspent;
        private boolean ended;

        private Watch(Thread filling) {
            this.filling = filling;
            this.before = allocated(filling);
        }

        private static long allocated(Thread thread) {
            return MEMORY == null ? 0 : MEMORY.getThreadAllocatedBytes(thread.getId());
        }

        @Override
        public synchronized void run() {
            if (ended || overspent != null) {
                return;
            }
            if (System.nanoTime() - begun > TimeUnit.SECONDS.toNanos(SECONDS)) {
                overspent = "takes more than " + SECONDS + " seconds to fill";
            } else if (allocated(filling) - before > MOST_MEMORY) {
                overspent = "takes more than " + (MOST_MEMORY >> 30) + " GB of memory to fill";
            }
            if (overspent != null) {
                filling.interrupt();
            }
        }

        private synchronized String overspent() {
            return overspent;
        }

        /** After this the thread is not broken off any more, and what was not noticed is taken back. */
        private synchronized void end() {
            ended = true;
            if (overspent != null) {
                Thread.interrupted();
            }
        }
    }

    /** Takes text up to what a paper could ever need. */
    private static final class Bounded extends Writer {
        private final StringWriter filled;

        private Bounded(StringWriter filled) {
            this.filled = filled;
        }

        @Override
        public void write(char[] text, int from, int length) throws IOException {
            if (filled.getBuffer().length() + (long) length > MOST_TEXT) {
                throw new Overspent("gives more than " + (MOST_TEXT >> 20) + " million characters");
            }
            filled.write(text, from, length);
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
