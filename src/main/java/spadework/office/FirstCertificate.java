// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import spadework.closeout.BuiltJob;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.warranty.CertificatePaper;
import spadework.paperwork.warranty.WarrantyCertificate;
import spadework.press.svg.SceneSvg;

/**
 * The first certificate of a closed job as its folder tells it, for a later owner's: the register keeps neither plan
 * nor logo.
 *
 * @param plan of what was built, as SVG
 * @param terms words of the homeowner's papers of the job
 */
public record FirstCertificate(WarrantyCertificate certificate, String plan, PaperWords terms) {

    /** The certificate of that number; empty where the folder cannot be read any more, or tells another. */
    public static Optional<FirstCertificate> of(Office office, Path job, String number) {
        return read(office, job).flatMap(bid -> of(bid, number));
    }

    /** A register is kept longer than the files of a job: without them the certificate goes without a plan. */
    private static Optional<Bid> read(Office office, Path job) {
        try {
            return office.bid(job) instanceof Bid bid ? Optional.of(bid) : Optional.empty();
        } catch (UncheckedIOException gone) {
            return Optional.empty();
        }
    }

    private static Optional<FirstCertificate> of(Bid bid, String number) {
        Job described = bid.dossier().job();
        boolean same = described
                .closed()
                .flatMap(Closed::certificate)
                .filter(number::equals)
                .isPresent();
        if (!same || described.agreement().finishedWork().isEmpty()) {
            return Optional.empty();
        }
        Dossier words = HomeownerPapers.words(bid.dossier(), "certificate");
        Scene plan = PlanSketch.of(BuiltJob.of(described), words.terms().language());
        return Optional.of(new FirstCertificate(CertificatePaper.of(words, plan), SceneSvg.of(plan), words.terms()));
    }
}
