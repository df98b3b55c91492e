// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import java.util.List;
import java.util.Optional;
import spadework.job.AsBuilt;
import spadework.job.BuiltPipe;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.job.Water;

/** The agreed work with the lengths, depths and levels as they were built. */
public final class BuiltJob {
    private BuiltJob() {}

    /** What was not recorded stays as agreed; {@link CloseChecks} says that it is missing. */
    public static Job of(Job agreed) {
        return agreed.agreement().asBuilt().map(built -> built(agreed, built)).orElse(agreed);
    }

    private static Job built(Job agreed, AsBuilt built) {
        Job job = agreed;
        for (Wall wall : agreed.walls()) {
            job = built.wall(wall.label())
                    .map(as -> wall.asBuilt(as.length(), as.depthStart(), as.depthEnd()))
                    .map(job::withWall)
                    .orElse(job);
        }
        Water water = agreed.water();
        return job.withWater(new Water(
                water.drains().stream().map(drain -> drain(drain, built)).toList(),
                runs(water.mains(), built),
                runs(water.roofLines(), built),
                water.downspouts(),
                water.outlets(),
                water.candidates()));
    }

    private static FootingDrain drain(FootingDrain drain, AsBuilt built) {
        Optional<BuiltPipe> pipe = built.pipe(drain.label());
        return new FootingDrain(
                drain.label(),
                drain.along(),
                drain.item(),
                drain.teeAt(),
                drain.into(),
                pipe.flatMap(BuiltPipe::startInvert).or(drain::startInvert),
                pipe.flatMap(BuiltPipe::endInvert).or(drain::endInvert),
                pipe.flatMap(BuiltPipe::teeInvert).or(drain::teeInvert),
                drain.startGrade(),
                drain.endGrade());
    }

    private static List<SolidRun> runs(List<SolidRun> runs, AsBuilt built) {
        return runs.stream()
                .map(run -> built.pipe(run.label()).map(pipe -> run(run, pipe)).orElse(run))
                .toList();
    }

    private static SolidRun run(SolidRun run, BuiltPipe pipe) {
        return new SolidRun(
                run.label(),
                pipe.length(),
                run.item(),
                run.trench(),
                run.bends(),
                run.into(),
                pipe.startInvert().or(run::startInvert),
                pipe.endInvert().or(run::endInvert),
                run.startGrade(),
                run.endGrade(),
                run.beside());
    }
}
