// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.SolidRun;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;

/** Which pipe of the book a run gets: the item that the job names, else the book's standard one. */
public final class Pipes {
    private Pipes() {}

    /**
     * The pipe of a footing drain.
     *
     * @throws IllegalArgumentException if the item has no size; intake has checked that every pipe item does
     */
    public static Pipe of(FootingDrain drain, PriceBook book) {
        return size(drain.item().map(book::get).orElseGet(() -> standard(book, Measure.DRAIN_PIPE)));
    }

    /**
     * The pipe of a solid run.
     *
     * @param measure {@link Measure#MAIN_PIPE} or {@link Measure#ROOF_PIPE}
     * @throws IllegalArgumentException if the item has no size; intake has checked that every pipe item does
     */
    public static Pipe of(SolidRun run, PriceBook book, Measure measure) {
        return size(run.item().map(book::get).orElseGet(() -> standard(book, measure)));
    }

    /** The job's first main, else the book's standard one. */
    public static Pipe main(Job job, PriceBook book) {
        return job.water().mains().stream()
                .findFirst()
                .map(run -> of(run, book, Measure.MAIN_PIPE))
                .orElseGet(() -> size(standard(book, Measure.MAIN_PIPE)));
    }

    /** The discharge pipe of a sump. */
    public static Pipe discharge(PriceBook book) {
        return size(standard(book, Measure.SUMP_DISCHARGE));
    }

    private static Pipe size(LineItem item) {
        return item.pipe().orElseThrow(() -> new IllegalArgumentException(item.code() + " has no pipe size"));
    }

    private static LineItem standard(PriceBook book, Measure measure) {
        return book.standardFor(measure).stream()
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no standard item for " + measure.trade()));
    }
}
