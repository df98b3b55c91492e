// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.company.ContactPerson;
import spadework.company.Insurance;
import spadework.company.Paper;
import spadework.job.Job;
import spadework.job.Space;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;

/** What every paper opens with. */
public final class PaperHeads {
    private PaperHeads() {}

    public static PaperHead of(Dossier dossier) {
        Job job = dossier.job();
        return of(dossier, job.issued(), dossier.terms().day(job.issued().plusDays(job.validDays())));
    }

    /** The head of a paper that has a date of its own. */
    public static PaperHead of(Dossier dossier, LocalDate issued) {
        return of(dossier, issued, "");
    }

    private static PaperHead of(Dossier dossier, LocalDate issued, String validUntil) {
        Job job = dossier.job();
        String contact = Stream.of(job.customer().phone(), job.customer().email())
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return new PaperHead(
                firm(dossier),
                job.number(),
                job.title(),
                dossier.terms().day(issued),
                issued.toString(),
                validUntil,
                job.customer().names(),
                contact,
                job.site().address().text(),
                job.site().space() == Space.CRAWL_SPACE);
    }

    private static Firm firm(Dossier dossier) {
        Firm plain = firm(dossier.company());
        PaperWords terms = dossier.terms();
        Insurance insurance = dossier.company().insurance();
        return plain.withLogo(dossier.photos().logo())
                .withLicenseLabel(terms.own(plain.licenseLabel()))
                .withInsurance(dossier.terms()
                        .get(
                                "insurance",
                                "carrier",
                                insurance.carrier(),
                                "policy",
                                insurance.policy(),
                                "limits",
                                terms.own(insurance.limits()),
                                "until",
                                dossier.terms().day(insurance.until())));
    }

    /** The firm without its logo and its insurance, as papers have it that go to no homeowner. */
    public static Firm firm(Company company) {
        return new Firm(
                company.name(),
                company.license().label(),
                company.license().number(),
                "",
                company.address().text(),
                company.phone(),
                company.email(),
                company.contactPerson().map(ContactPerson::name).orElse(""),
                company.contactPerson().flatMap(ContactPerson::phone).orElse(company.phone()),
                Optional.empty(),
                company.paper() == Paper.A4);
    }
}
