package spadework.paperwork;

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
        String contact = Stream.of(job.customer().phone(), job.customer().email())
                .flatMap(java.util.Optional::stream)
                .collect(Collectors.joining(", "));
        return new Head(
                firm(dossier),
                job.number(),
                job.title(),
                Dates.words(job.issued()),
                job.issued().toString(),
                Dates.words(job.issued().plusDays(job.validDays())),
                job.customer().names(),
                contact,
                job.site().address().text(),
                job.site().space() == Space.CRAWL_SPACE);
    }

    private static Firm firm(Dossier dossier) {
        Company company = dossier.company();
        String insurance = company.insurance().carrier() + ", policy " + company.insurance().policy() + ", "
                + company.insurance().limits() + ", until " + Dates.words(company.insurance().until());
        return new Firm(
                company.name(),
                company.licence().label(),
                company.licence().number(),
                insurance,
                company.address().text(),
                company.phone(),
                company.email(),
                dossier.logo(),
                company.paper() == Paper.A4);
    }
}
