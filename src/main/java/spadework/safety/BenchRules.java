// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.ground.DigBody;
import spadework.job.Job;
import spadework.job.Protection;
import spadework.job.SolidRun;
import spadework.trench.Benching;

/** Whether steps in a bank are asked for in soil that does not bear them. */
final class BenchRules implements Rule {

    @Override
    public List<Finding> check(Facts facts) {
        Optional<Benching.Against> against = Benching.against(facts.job().site().soil());
        List<BodyNames> asked = against.isEmpty() ? List.of() : asked(facts);
        if (asked.isEmpty()) {
            return List.of();
        }
        String id = switch (against.get()) {
            case TYPE -> "bench-in-type";
            case TEXTURE -> "bench-in-texture";
            case WATER -> "bench-in-water";
        };
        return List.of(stop(id, BodyNames.labels(asked), Benching.SOURCE, "at", BodyNames.joined(asked))
                .at(BodyNames.bodies(asked)));
    }

    /** Bodies that the job wants benched, deeper than one step; what lies in another's trench has no bank. */
    private static List<BodyNames> asked(Facts facts) {
        List<BodyNames> asked = new ArrayList<>();
        for (DigBody body : facts.bodies()) {
            if (body.entered() && isAsked(facts.job(), body) && body.deepest().feet() > Benching.RISE.feet() + 1e-6) {
                asked.add(BodyNames.of(body));
            }
        }
        return asked;
    }

    private static boolean isAsked(Job job, DigBody body) {
        Stream<Optional<Protection>> wanted = switch (body.kind()) {
            case WALL ->
                Stream.of(Optional.of(job.getWall(body.label()).digging().protection()));
            case MAIN -> runs(job.water().mains(), body);
            case ROOF_LINE -> runs(job.water().roofLines(), body);
            case DISCHARGE ->
                job.water().outlets().stream()
                        .filter(outlet -> outlet.label().equals(body.label()))
                        .map(outlet -> outlet.dischargeTrench().flatMap(trench -> trench.protection()));
            case WINDOW_WELL, LEAD, SUMP_PIT, TEST_PIT -> Stream.empty();
        };
        return wanted.anyMatch(Optional.of(Protection.BENCHED)::equals);
    }

    private static Stream<Optional<Protection>> runs(List<SolidRun> runs, DigBody body) {
        return runs.stream()
                .filter(run -> run.label().equals(body.label()))
                .map(run -> run.trench().protection());
    }
}
