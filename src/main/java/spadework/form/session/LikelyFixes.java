// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.util.List;
import java.util.stream.Stream;
import spadework.draft.FileSchema;
import spadework.draft.LikelyReadings;
import spadework.finding.Fault;
import spadework.form.kit.FaultWords;

/** What would be right in place of what was written, as far as somebody can guess. */
public final class LikelyFixes {
    private static final int MOST = 3;

    private LikelyFixes() {}

    /** The likeliest first, at most three; none where nothing was written, or where the fault is in another file. */
    public static List<String> of(JobSession session, Fault fault) {
        String pointer = fault.place().pointer();
        if (FaultWords.isMissing(fault) || !isOfTheJob(session, fault)) {
            return List.of();
        }
        String written = session.draft().shown(pointer);
        Stream<String> readings =
                FileSchema.job().at(pointer).stream().flatMap(spot -> LikelyReadings.of(spot, written).stream());
        return Stream.concat(FaultWords.fix(fault).stream(), readings)
                .distinct()
                .limit(MOST)
                .toList();
    }

    private static boolean isOfTheJob(JobSession session, Fault fault) {
        String file = fault.place().file().replaceAll(".*[/\\\\]", "");
        return file.equals(session.file().path().getFileName().toString());
    }
}
