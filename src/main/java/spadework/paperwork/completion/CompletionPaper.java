// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import spadework.drawing.plan.PlanSketch;
import spadework.job.AsBuilt;
import spadework.job.BuiltWall;
import spadework.job.Closed;
import spadework.job.FlowTest;
import spadework.job.HoldPoint;
import spadework.job.Job;
import spadework.job.Received;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.Picture;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.WarrantyPromises;

/** Puts the completion statement together: facts of what was built, and the final account. */
public final class CompletionPaper {
    private CompletionPaper() {}

    /**
     * The completion statement of a job.
     *
     * @param agreed the agreed work
     * @throws java.util.NoSuchElementException if no finished work is recorded
     */
    public static CompletionStatement of(Dossier agreed) {
        Job job = agreed.job();
        AsBuilt record = job.agreement().finishedWork().orElseThrow();
        BuiltRecord built = new BuiltRecord(agreed, record);
        return new CompletionStatement(
                PaperHeads.of(agreed, day(agreed)),
                PlanSketch.of(built.built().job(), agreed.terms().language()),
                new CompletionDates(
                        agreed.terms().day(record.started()),
                        agreed.terms().day(record.finished().orElseThrow()),
                        job.closed()
                                .map(Closed::completed)
                                .map(agreed.terms()::day)
                                .orElse(""),
                        job.closed().flatMap(Closed::certificate).orElse("")),
                AgreedParts.of(agreed.terms(), job),
                new BuiltWork(
                        built.walls(),
                        built.pipes(),
                        built.ground(),
                        record.flowTests().stream()
                                .map(test -> test(agreed.terms(), test))
                                .toList(),
                        built.open(),
                        built.compared()),
                pictures(agreed, record),
                record.note(),
                FinalAccounts.of(agreed),
                WarrantyPromises.of(agreed, job));
    }

    /** The photos of hold points, each told by the first point that names it. */
    private static List<Picture> pictures(Dossier agreed, AsBuilt record) {
        return agreed.photos().work().holdPoints().stream()
                .map(picture -> new Picture(
                        picture.number(), picture.file(), caption(agreed.terms(), record, picture), picture.data()))
                .toList();
    }

    private static String caption(PaperWords terms, AsBuilt record, Picture picture) {
        for (BuiltWall wall : record.walls()) {
            for (HoldPoint point : wall.holdPoints()) {
                if (point.number() > 0
                        && point.photo().filter(picture.file()::equals).isPresent()) {
                    return terms.get(
                            "compared.photo",
                            "wall",
                            wall.label(),
                            "number",
                            Integer.toString(point.number()),
                            "what",
                            point.what());
                }
            }
        }
        return picture.caption();
    }

    /** The day of the paper: the last of all days that it tells of, of the work as of the money that came. */
    public static LocalDate day(Dossier agreed) {
        Job job = agreed.job();
        LocalDate done = job.closed()
                .map(Closed::completed)
                .orElseGet(() ->
                        job.agreement().asBuilt().flatMap(AsBuilt::finished).orElseThrow());
        return job.agreement().received().stream()
                .map(Received::on)
                .filter(done::isBefore)
                .max(Comparator.naturalOrder())
                .orElse(done);
    }

    private static BuiltWork.Test test(PaperWords terms, FlowTest test) {
        return new BuiltWork.Test(terms.day(test.on()), test.passed(), test.what(), test.by());
    }
}
