// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.closeout.BuiltJob;
import spadework.company.Company;
import spadework.drawing.plan.PlanSketch;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.law.WarrantyTerm;
import spadework.office.HomeownerPapers;
import spadework.paperwork.Dossier;
import spadework.paperwork.warranty.CertificatePaper;
import spadework.paperwork.warranty.WarrantyCertificate;
import spadework.paperwork.work.FinishWork;
import spadework.takeoff.wall.WarrantedWalls;
import spadework.warranty.Contractor;
import spadework.warranty.CoveredPart;
import spadework.warranty.CoveredRun;
import spadework.warranty.OwnerTerms;
import spadework.warranty.Warranty;
import spadework.warranty.WarrantyCoverage;
import spadework.warranty.WarrantyParties;

/** A closed job's warranty as the register keeps it: it says what the certificate says. */
public final class RegisteredWarranty {
    private RegisteredWarranty() {}

    static Warranty of(Dossier dossier, String number) {
        Job job = BuiltJob.of(dossier.job());
        WarrantyTerms terms = job.warranty();
        LocalDate from = job.closed().map(Closed::completed).orElseThrow();
        Company company = dossier.company();
        Dossier words = HomeownerPapers.words(dossier, "certificate");
        WarrantyCertificate certificate =
                CertificatePaper.of(words, PlanSketch.of(job, words.terms().language()));
        Contractor contractor = new Contractor(
                company.name(),
                company.address().text(),
                company.phone(),
                company.email(),
                company.license().label() + " " + company.license().number());
        WarrantyCoverage coverage = new WarrantyCoverage(
                certificate.walls().stream()
                        .map(wall ->
                                new CoveredRun(wall.label(), wall.where() + ": " + onIt(wall.finish()), wall.length()))
                        .toList(),
                certificate.runs().stream()
                        .map(run -> new CoveredRun(run.label(), run.pipe(), run.length()))
                        .toList(),
                parts(new WarrantedWalls(job, dossier.book()).parts(), from),
                terms.notCovered());
        return new Warranty(
                number,
                Optional.empty(),
                job.number(),
                new WarrantyParties(job.customer().names(), job.site().address().text(), contractor),
                coverage,
                new OwnerTerms(
                        terms.replyDays(),
                        terms.visitDays(),
                        terms.findingDays(),
                        terms.beginDays(),
                        terms.transfers(),
                        terms.transferNoticeDays(),
                        terms.duties()));
    }

    /** What is on a wall, as the certificate's front says it. */
    private static String onIt(FinishWork finish) {
        return finish.material() + (finish.dryFilm().isEmpty() ? "" : ", " + finish.dryFilm()) + " (" + finish.word()
                + ")";
    }

    private static List<CoveredPart> parts(List<WarrantyPart> parts, LocalDate from) {
        return parts.stream()
                .map(part -> new CoveredPart(
                        part.part(), part.promise(), part.years(), from, WarrantyTerm.lastDay(from, part.years())))
                .toList();
    }
}
