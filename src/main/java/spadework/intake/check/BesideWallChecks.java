// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.List;
import spadework.intake.source.SourceFile;
import spadework.job.BesideWall;
import spadework.job.Job;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.measure.Length;

/** A run lies no farther along a wall than it is long itself, or the wall is. */
final class BesideWallChecks {
    private BesideWallChecks() {}

    static void check(Job job, SourceFile sheet) {
        each(job, "/water/mains/", job.water().mains(), sheet);
        each(job, "/water/roofLines/", job.water().roofLines(), sheet);
    }

    private static void each(Job job, String list, List<SolidRun> runs, SourceFile sheet) {
        for (int i = 0; i < runs.size(); i++) {
            SolidRun run = runs.get(i);
            String pointer = list + i + "/besideWall/length";
            if (run.beside().isPresent() && sheet.isSound(pointer) && sheet.isSound(list + i + "/length")) {
                length(job, run, run.beside().get(), pointer, sheet);
            }
        }
    }

    private static void length(Job job, SolidRun run, BesideWall beside, String pointer, SourceFile sheet) {
        Length most = run.length();
        for (int i = 0; i < job.walls().size(); i++) {
            Wall wall = job.walls().get(i);
            boolean shorter =
                    wall.label().equals(beside.wall()) && wall.length().compareTo(most) < 0;
            most = shorter && sheet.isSound("/walls/" + i + "/length") ? wall.length() : most;
        }
        if (beside.length().compareTo(most) > 0) {
            sheet.fault(
                    pointer,
                    beside.length().text() + " along wall " + beside.wall(),
                    "at most " + most.text() + ", the length of the run or of the wall",
                    "give the part that lies in the trench of that wall");
        }
    }
}
