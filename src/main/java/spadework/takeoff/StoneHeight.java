package spadework.takeoff;

import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.WallMeasures;

/** How high the stone stands in the trench. */
public final class StoneHeight {
    private StoneHeight() {}

    /** Height of the stone above the trench's bottom, by footing or by pipe, whichever is higher (IRC R405.1). */
    public static Length of(Job job, PriceBook book, FootingDrain drain, Wall wall) {
        return Length.ofFeet(StoneEnvelope.height(WallMeasures.of(job, wall), DrainTakeoff.pipe(drain, book))
                .number());
    }
}
