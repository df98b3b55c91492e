// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.job.AsBuilt;
import spadework.job.BuiltWall;
import spadework.job.Downspout;
import spadework.job.FlowTest;
import spadework.job.Job;

/**
 * What the scope of work asks to be written down and the record of what was built does not hold. The completion
 * statement prints it as open, and closing tells it: common practice, no source.
 *
 * @param gauge labels of the coated walls on which no coat, or not each, was read with the gauge
 * @param downspouts labels of those whose own test no flow test tells of
 */
public record OpenEvidence(List<String> gauge, List<String> downspouts) {
    private static final Pattern EACH =
            Pattern.compile("\\b(?:each|every|all|both|cada|tod[ao]s|amb[ao]s)\\b", Pattern.CASE_INSENSITIVE);

    public OpenEvidence {
        gauge = List.copyOf(gauge);
        downspouts = List.copyOf(downspouts);
    }

    /**
     * What is open of the agreed work.
     *
     * @param films of the job as built: one for each wall that gets a liquid coating
     */
    public static OpenEvidence of(Job agreed, List<AppliedFilm> films) {
        Optional<AsBuilt> built = agreed.agreement().asBuilt();
        if (built.isEmpty()) {
            return new OpenEvidence(List.of(), List.of());
        }
        return new OpenEvidence(
                films.stream()
                        .map(AppliedFilm::wall)
                        .filter(label -> built.get()
                                .wall(label)
                                .filter(OpenEvidence::isRead)
                                .isEmpty())
                        .toList(),
                agreed.water().downspouts().stream()
                        .filter(spout -> !isTested(spout, agreed, built.get()))
                        .map(Downspout::label)
                        .toList());
    }

    private static boolean isRead(BuiltWall wall) {
        return wall.thinnestWet().isPresent();
    }

    /** A line with one downspout is tested with it; of several, a test that went well names it or says "each". */
    private static boolean isTested(Downspout spout, Job agreed, AsBuilt built) {
        boolean alone = agreed.water().downspouts().stream()
                        .filter(other -> other.into().equals(spout.into()))
                        .count()
                == 1;
        Stream<FlowTest> passed = built.flowTests().stream()
                .filter(FlowTest::passed)
                .filter(test -> test.line().map(spout.into()::equals).orElse(true));
        Pattern named = Pattern.compile("\\b" + Pattern.quote(spout.label()) + "\\b");
        return passed.anyMatch(test -> (alone && test.line().isPresent())
                || EACH.matcher(test.what()).find()
                || named.matcher(test.what()).find());
    }
}
