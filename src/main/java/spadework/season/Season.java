// SPDX-License-Identifier: Apache-2.0
package spadework.season;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import spadework.feedback.FeedbackSeason;
import spadework.money.Dollars;

/**
 * The jobs whose proposals were dated within a season. A draft that was never issued is none of them.
 *
 * @param jobs by the day of their proposal
 * @param feedback what those that were closed took against the estimate
 */
public record Season(LocalDate from, LocalDate until, List<SeasonJob> jobs, FeedbackSeason feedback) {

    public Season {
        jobs = jobs.stream()
                .sorted(Comparator.comparing(SeasonJob::issued).thenComparing(SeasonJob::number))
                .toList();
    }

    /** How many jobs, and what they come to. */
    public record Count(int jobs, Dollars total) {}

    public Count offered() {
        return count(job -> true);
    }

    public Count won() {
        return count(SeasonJob::isWon);
    }

    public Count lost() {
        return count(SeasonJob::isLost);
    }

    public Count open() {
        return count(SeasonJob::isOpen);
    }

    /** Of a hundred proposals that were answered, how many were signed, to whole ones; empty where none was. */
    public Optional<Integer> wonOfHundred() {
        int answered = won().jobs() + lost().jobs();
        return answered == 0
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(100L * won().jobs())
                        .divide(BigDecimal.valueOf(answered), 0, RoundingMode.HALF_UP)
                        .intValueExact());
    }

    /** Days that were sold with the jobs that are done. */
    public int daysSold() {
        return done().stream().mapToInt(job -> job.days().sold()).sum();
    }

    /** Days that those jobs took. */
    public int daysWorked() {
        return done().stream()
                .mapToInt(job -> job.days().worked().orElseThrow())
                .sum();
    }

    /** The jobs whose days of work are known. */
    public List<SeasonJob> done() {
        return jobs.stream().filter(job -> job.days().worked().isPresent()).toList();
    }

    public Dollars invoiced() {
        return sum(job -> job.money().invoiced());
    }

    public Dollars received() {
        return sum(job -> job.money().received());
    }

    public Dollars outstanding() {
        return sum(job -> job.money().outstanding());
    }

    /** How many claims each cause brought, and what they cost. */
    public Map<String, Count> claims() {
        Map<String, Count> causes = new TreeMap<>();
        jobs.stream()
                .flatMap(job -> job.claims().stream())
                .forEach(claim -> causes.merge(
                        claim.cause(),
                        new Count(1, claim.cost()),
                        (one, next) ->
                                new Count(one.jobs() + next.jobs(), one.total().plus(next.total()))));
        return causes;
    }

    private Count count(Predicate<SeasonJob> which) {
        List<SeasonJob> found = jobs.stream().filter(which).toList();
        return new Count(
                found.size(), Dollars.total(found.stream().map(SeasonJob::total).toList()));
    }

    private Dollars sum(Function<SeasonJob, Dollars> of) {
        return Dollars.total(jobs.stream().map(of).toList());
    }
}
