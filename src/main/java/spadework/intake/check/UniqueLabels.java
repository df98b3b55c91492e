// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import spadework.intake.source.Excerpt;
import spadework.intake.source.SourceFile;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletCandidate;
import spadework.job.SolidRun;
import spadework.job.TestPit;
import spadework.job.Wall;
import spadework.pricebook.Section;

/** A label means one wall, pipe or outlet, so that a paper that names it cannot be misread. */
public final class UniqueLabels {
    private final SourceFile sheet;
    private final Map<String, String> seen = new HashMap<>();

    private UniqueLabels(SourceFile sheet) {
        this.sheet = sheet;
    }

    static void check(Job job, SourceFile sheet) {
        UniqueLabels labels = new UniqueLabels(sheet);
        Section.labelsBesideWalls().forEach(section -> labels.seen.put(section, "by a section of the price"));
        labels.addAll("/walls", job.walls(), Wall::label);
        labels.addAll("/water/drains", job.water().drains(), FootingDrain::label);
        labels.addAll("/water/mains", job.water().mains(), SolidRun::label);
        labels.addAll("/water/roofLines", job.water().roofLines(), SolidRun::label);
        labels.addAll("/water/outlets", job.water().outlets(), Outlet::label);
        labels.addAll("/water/candidates", job.water().candidates(), OutletCandidate::label);
        labels.addAll("/site/testPits", job.site().testPits(), TestPit::label);
        new UniqueLabels(sheet).addAll("/water/downspouts", job.water().downspouts(), Downspout::label);
    }

    private <T> void addAll(String list, List<T> things, Function<T, String> label) {
        for (int i = 0; i < things.size(); i++) {
            String pointer = list + "/" + i + "/label";
            if (sheet.isSound(pointer)) {
                add(pointer, label.apply(things.get(i)));
            }
        }
    }

    private void add(String pointer, String label) {
        String first =
                seen.putIfAbsent(label, "in line " + sheet.placeOf(pointer).line());
        if (first != null) {
            String found = "the label " + Excerpt.quoted(label) + ", taken " + first;
            sheet.fault(
                    pointer,
                    found,
                    "each label once among walls, pipes, outlets and test pits",
                    "choose another label");
        }
    }
}
