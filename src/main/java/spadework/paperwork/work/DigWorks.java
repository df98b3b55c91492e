// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Job;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.TrenchLimits;

/** What is dug away from the walls and entered: pipe trenches and sump pits. */
public final class DigWorks {
    private static final Set<BodyKind> APART =
            EnumSet.of(BodyKind.MAIN, BodyKind.ROOF_LINE, BodyKind.LEAD, BodyKind.DISCHARGE, BodyKind.SUMP_PIT);

    private DigWorks() {}

    /** In the order of mains, roof lines, sumps; what lies wholly within another trench is dug with that one. */
    public static List<DigWork> of(Job job) {
        return DigBodies.of(job).stream()
                .filter(body -> APART.contains(body.kind()) && body.entered())
                .map(DigWorks::work)
                .toList();
    }

    private static DigWork work(DigBody body) {
        Length deepest = body.deepest();
        return new DigWork(
                body.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                body.label(),
                body.kind() == BodyKind.SUMP_PIT
                        ? ""
                        : Length.ofFeet(body.length()).text(),
                deepest.text(),
                Length.ofFeet(body.width()).text(),
                body.bank().protection().name().toLowerCase(Locale.ROOT),
                Figures.inWorking(body.bank().slope().value()),
                Bank.isProtectedAt(deepest.feet()),
                TrenchLimits.needsWayOut(deepest));
    }
}
