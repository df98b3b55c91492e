// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.Protection;
import spadework.job.SiteLimit;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.Benching;
import spadework.trench.TrenchLimits;
import spadework.whatif.Unlawful.Reason;

/** What stands against a way to dig, wall by wall. It is no all-clear: the competent person decides on site. */
final class TrenchLaw {
    private TrenchLaw() {}

    static List<Unlawful> against(TrenchWay way, Job job) {
        List<Unlawful> against = new ArrayList<>();
        for (Wall wall : job.walls()) {
            if (needsWay(wall)) {
                against(way, job, wall).ifPresent(against::add);
            }
        }
        return against;
    }

    /** An upright trench under 5 ft stays as it is, with the competent person's look (29 CFR 1926.652(a)(1)). */
    static boolean needsWay(Wall wall) {
        return wall.digging().protection() != Protection.UPRIGHT
                || Bank.isProtectedAt(wall.deepestTrench().feet());
    }

    private static Optional<Unlawful> against(TrenchWay way, Job job, Wall wall) {
        if (TrenchLimits.isEngineered(wall.deepestTrench())) {
            return described(wall, Reason.ENGINEER, wall.deepestTrench().text());
        }
        return switch (way) {
            case SLOPE -> slope(job, wall);
            case BENCH -> bench(job, wall);
            case SHIELD -> shield(job, wall);
            case HAND -> slope(job, wall).isEmpty() ? Optional.empty() : shield(job, wall);
        };
    }

    private static Optional<Unlawful> slope(Job job, Wall wall) {
        return Bank.of(job.site(), sloped(wall))
                .inTheWay()
                .flatMap(limit ->
                        described(wall, Reason.NO_ROOM, limit.distance().text()));
    }

    private static Optional<Unlawful> bench(Job job, Wall wall) {
        Optional<Benching.Against> against = Benching.against(job.site().soil());
        if (against.isEmpty()) {
            return slope(job, wall);
        }
        return switch (against.get()) {
            case TYPE -> {
                SoilType type = Bank.soil(job.site());
                yield described(wall, Reason.NO_BENCH_IN_TYPE, type == SoilType.NOT_CLASSED ? "" : type.name());
            }
            case TEXTURE -> described(wall, Reason.NO_BENCH_IN_TEXTURE, "");
            case WATER -> described(wall, Reason.NO_BENCH_IN_WATER, "");
        };
    }

    private static Optional<Unlawful> shield(Job job, Wall wall) {
        Length foot = wall.footing().projection().plus(wall.digging().bottomWidth());
        return job.site().limits().stream()
                .filter(limit -> limit.wall().equals(wall.label()))
                .filter(limit -> limit.kind() != LimitKind.TREE && limit.kind() != LimitKind.UTILITY)
                .map(SiteLimit::distance)
                .filter(distance -> foot.compareTo(distance) > 0)
                .findFirst()
                .flatMap(distance -> described(wall, Reason.NO_ROOM_FOR_SHIELD, distance.text()));
    }

    /** Whether a sloped bank has room at a wall. */
    static boolean slopes(Job job, Wall wall) {
        return Bank.of(job.site(), sloped(wall)).inTheWay().isEmpty();
    }

    static Wall dug(Wall wall, Access access, Protection protection) {
        Digging d = wall.digging();
        return wall.withDigging(new Digging(access, d.handShare(), d.bottomWidth(), protection, d.ends()));
    }

    private static Wall sloped(Wall wall) {
        return dug(wall, wall.digging().access(), Protection.SLOPED);
    }

    private static Optional<Unlawful> described(Wall wall, Reason reason, String figure) {
        return Optional.of(new Unlawful(wall.label(), reason, figure));
    }
}
