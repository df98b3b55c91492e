package spadework.paperwork;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.company.Paper;
import spadework.job.Job;
import spadework.job.Space;

/** What every paper opens with. */
final class Heads {
    private Heads() {}

    static Head of(Dossier dossier) {
        Job job = dossier.job();
        return of(dossier, job.issued(), Dates.words(job.issued().plusDays(job.validDays())));
    }

    /** The head of a paper that has a date of its own. */
    static Head of(Dossier dossier, LocalDate issued) {
        return of(dossier, issued, "");
    }

    private static Head of(Dossier dossier, LocalDate issued, String validUntil) {
        Job job = dossier.job();
        String contact = Stream.of(job.customer().phone(), job.customer().email())
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return new Head(
                firm(dossier),
                job.number(),
                job.title(),
                Dates.words(issued),
                issued.toString(),
                validUntil,
                job.customer().names(),
                contact,
                job.site().address().text(),
                job.site().space() == Space.CRAWL_SPACE);
    }

    private static Firm firm(Dossier dossier) {
        return firm(dossier.company(), dossier.logo());
    }

    static Firm firm(Company company, Optional<String> logo) {
        String insurance = company.insurance().carrier() + ", policy "
                + company.insurance().policy() + ", " + company.insurance().limits() + ", until "
                + Dates.words(company.insurance().until());
        return new Firm(
                company.name(),
                company.licence().label(),
                company.licence().number(),
                insurance,
                company.address().text(),
                company.phone(),
                company.email(),
                logo,
                company.paper() == Paper.A4);
    }
}
