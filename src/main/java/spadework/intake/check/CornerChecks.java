// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.HashSet;
import java.util.Set;
import spadework.intake.source.Excerpt;
import spadework.intake.source.SourceFile;
import spadework.job.Corner;
import spadework.job.Job;
import spadework.job.WallEnd;

/** A corner joins two walls, and an end of a wall is in one corner. */
public final class CornerChecks {
    private CornerChecks() {}

    static void check(Job job, SourceFile sheet) {
        Set<WallEnd> taken = new HashSet<>();
        for (int i = 0; i < job.corners().size(); i++) {
            Corner corner = job.corners().get(i);
            String pointer = "/corners/" + i;
            boolean sound = sheet.isSound(pointer + "/first") && sheet.isSound(pointer + "/second");
            if (sound && corner.first().wall().equals(corner.second().wall())) {
                String found = "wall " + Excerpt.quoted(corner.first().wall()) + " twice in one corner";
                sheet.fault(pointer + "/second", found, "two different walls", "name the other wall");
            }
            take(corner.first(), pointer + "/first", taken, sheet);
            take(corner.second(), pointer + "/second", taken, sheet);
        }
    }

    private static void take(WallEnd end, String pointer, Set<WallEnd> taken, SourceFile sheet) {
        if (sheet.isSound(pointer) && !taken.add(end)) {
            String found = Excerpt.quoted(end.wall() + (end.atEnd() ? " end" : " start")) + " in a second corner";
            sheet.fault(pointer, found, "each end in one corner", "keep one of the two, or name the other end");
        }
    }
}
