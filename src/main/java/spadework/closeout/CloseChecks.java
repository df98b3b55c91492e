// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Agreement;
import spadework.job.AsBuilt;
import spadework.job.BuiltWall;
import spadework.job.Change;
import spadework.job.ChangeState;
import spadework.job.FlowTest;
import spadework.job.HoldPoint;
import spadework.job.Job;
import spadework.job.Wall;

/** What keeps a job from being closed, each with its reason, and what is only worth knowing. */
public final class CloseChecks {
    private static final String PRACTICE = "common practice, no source";

    private final Job agreed;
    private final Agreement agreement;
    private final List<Finding> found = new ArrayList<>();

    private CloseChecks(Job agreed) {
        this.agreed = agreed;
        this.agreement = agreed.agreement();
    }

    /**
     * Looks at everything that a warranty rests on.
     *
     * @param agreed the agreed work
     * @param films of the job as built
     * @param waiver why an open balance is waived, if it is
     */
    public static List<Finding> of(Job agreed, List<AppliedFilm> films, Account account, BalanceWaiver waiver) {
        CloseChecks checks = new CloseChecks(agreed);
        checks.accepted();
        checks.changes();
        checks.built();
        films.forEach(checks::film);
        checks.flow();
        checks.open(OpenEvidence.of(agreed, films));
        checks.balance(account, waiver);
        return List.copyOf(checks.found);
    }

    /** Whether a finding keeps the job open. */
    public static boolean isOpen(Finding finding) {
        return finding.severity() != Severity.ADVISE;
    }

    private void accepted() {
        if (agreement.accepted().isEmpty()) {
            must("close-not-accepted", "", Map.of());
        }
    }

    private void changes() {
        for (Change change : agreement.changes()) {
            if (change.state() == ChangeState.PENDING) {
                must("close-change-pending", Integer.toString(change.number()), Map.of("title", change.title()));
            }
        }
    }

    private void built() {
        if (agreement.asBuilt().isEmpty()) {
            must("close-not-recorded", "", Map.of());
            return;
        }
        AsBuilt built = agreement.asBuilt().get();
        if (built.finished().isEmpty()) {
            must("close-not-finished", "", Map.of());
        }
        agreed.walls().stream()
                .map(Wall::label)
                .filter(label -> built.wall(label).isEmpty())
                .forEach(label -> must("close-wall-not-recorded", label, Map.of()));
        pipes().stream()
                .filter(label -> built.pipe(label).isEmpty())
                .forEach(label -> must("close-pipe-not-recorded", label, Map.of()));
        pipes().stream()
                .filter(label -> built.pipe(label)
                        .filter(pipe -> !BuiltLevels.areRecorded(agreed, pipe))
                        .isPresent())
                .forEach(label -> must("close-level-not-recorded", label, Map.of()));
        agreed.walls().forEach(wall -> built.wall(wall.label()).ifPresent(as -> holdPoints(wall, as)));
        built.walls().stream()
                .filter(wall -> wall.batches().isEmpty())
                .forEach(wall -> advise("close-no-batch", wall.label(), Map.of()));
    }

    /** 1, the footing and the bare wall; 2, what was put on it. 3 is the flow test. */
    private void holdPoints(Wall wall, BuiltWall built) {
        for (int number = 1; number <= 2; number++) {
            int wanted = number;
            Map<String, String> values = Map.of("point", Integer.toString(number));
            List<HoldPoint> points = built.holdPoints().stream()
                    .filter(point -> point.number() == wanted)
                    .toList();
            if (points.isEmpty()) {
                must("close-hold-point-missing", wall.label(), values);
            } else if (points.stream().noneMatch(HoldPoint::isProved)) {
                must("close-hold-point-unproved", wall.label(), values);
            }
        }
    }

    private List<String> pipes() {
        List<String> labels = new ArrayList<>();
        agreed.water().drains().forEach(drain -> labels.add(drain.label()));
        agreed.water().mains().forEach(run -> labels.add(run.label()));
        agreed.water().roofLines().forEach(run -> labels.add(run.label()));
        return labels;
    }

    private void film(AppliedFilm film) {
        if (film.applied().isEmpty()) {
            must("close-no-gallons", film.wall(), Map.of());
        } else if (film.isShort()) {
            must(
                    "close-film-short",
                    film.wall(),
                    Map.of(
                            "applied", film.applied().get().valueText(),
                            "promised", film.promised().valueText(),
                            "dry", Math.round(film.dry().mils()) + " mil"));
        }
        thinPlaces(film);
    }

    /** The mean may be right and a place thin: what the gauge read there in all coats is held to the same film. */
    private void thinPlaces(AppliedFilm film) {
        agreement
                .asBuilt()
                .flatMap(built -> built.wall(film.wall()))
                .flatMap(BuiltWall::thinnestWet)
                .filter(film::isThin)
                .ifPresent(read -> must(
                        "close-film-thin",
                        film.wall(),
                        Map.of(
                                "read",
                                Math.round(read) + " mil",
                                "promised",
                                film.promised().valueText())));
    }

    /** Each line that carries water was promised a test. The last one counts: one that failed may be fixed. */
    private void flow() {
        if (agreement.asBuilt().isEmpty()) {
            return;
        }
        List<String> lines = new ArrayList<>();
        agreed.water().drains().forEach(drain -> lines.add(drain.label()));
        agreed.water().roofLines().forEach(run -> lines.add(run.label()));
        List<FlowTest> tests = agreement.asBuilt().get().flowTests();
        for (String line : lines) {
            Optional<FlowTest> last = tests.stream()
                    .filter(test -> test.line().map(line::equals).orElse(lines.size() == 1))
                    .reduce((one, next) -> next.on().isBefore(one.on()) ? one : next);
            if (last.isEmpty()) {
                must(tests.isEmpty() ? "close-no-flow-test" : "close-line-not-tested", line, Map.of());
            } else if (!last.get().passed()) {
                must(
                        "close-flow-test-failed",
                        line,
                        Map.of("on", day(last.get().on()), "what", last.get().what()));
            }
        }
    }

    private void open(OpenEvidence open) {
        open.gauge().forEach(wall -> advise("close-gauge-not-read", wall, Map.of()));
        open.downspouts().forEach(spout -> advise("close-downspout-not-tested", spout, Map.of()));
    }

    private void balance(Account account, BalanceWaiver waiver) {
        if (account.balance().isNegative()) {
            must("close-overpaid", "", Map.of("balance", account.balance().text()));
        } else if (!account.balance().isZero() && waiver.reason().isEmpty()) {
            must(
                    "close-unpaid",
                    "",
                    Map.of(
                            "balance",
                            account.balance().text(),
                            "total",
                            account.total().text()));
        } else if (!account.balance().isZero()) {
            advise(
                    "close-balance-waived",
                    "",
                    Map.of(
                            "balance",
                            account.balance().text(),
                            "why",
                            waiver.reason().get()));
        }
    }

    private static String day(LocalDate day) {
        return day.toString();
    }

    private void must(String id, String about, Map<String, String> values) {
        found.add(new Finding(id, Severity.MUST, about, values, PRACTICE));
    }

    private void advise(String id, String about, Map<String, String> values) {
        found.add(new Finding(id, Severity.ADVISE, about, values, PRACTICE));
    }
}
