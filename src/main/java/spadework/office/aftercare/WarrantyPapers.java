// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.office.FirstCertificate;
import spadework.office.Office;
import spadework.office.SignedPapers;
import spadework.office.files.FileName;
import spadework.paperwork.PaperWords;
import spadework.paperwork.warranty.CareCard;
import spadework.paperwork.warranty.CareCardPaper;
import spadework.paperwork.warranty.ReissuePaper;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;
import spadework.register.SealMark;
import spadework.warranty.Card;
import spadework.warranty.Claim;
import spadework.warranty.Warranty;
import spadework.wording.Language;

/** Prints the papers that are made from the register alone: the certificate of a later owner, the maintenance card. */
public final class WarrantyPapers {
    private final Office office;
    private final Templates templates;
    private final PagePress pages;

    WarrantyPapers(Office office) {
        this.office = office;
        this.templates = office.templates();
        this.pages = new PagePress(this.templates);
    }

    /** Pages and workbook of a reissued certificate, by file name. */
    Map<String, byte[]> certificate(
            Path job, Warranty warranty, String before, List<Claim> claims, LocalDate issued, SealMark mark) {
        Optional<FirstCertificate> first = FirstCertificate.of(office, job, warranty.first());
        PaperWords terms = first.map(FirstCertificate::terms).orElseGet(office::terms);
        ReissuePaper.Passed passed = new ReissuePaper.Passed(warranty, before, claims);
        Map<String, Object> model = first.map(found -> Map.<String, Object>of(
                        "reissue", ReissuePaper.of(terms, passed, issued, found.certificate()),
                        "plan", found.plan()))
                .orElseGet(() -> Map.of("reissue", ReissuePaper.of(terms, passed, issued)));
        PageInfo info = info(warranty, terms, issued, mark.text());
        Map<String, byte[]> files = print(warranty, "warranty", "reissue", model, info);
        try {
            return SignedPapers.of(files, issued);
        } catch (IOException unusable) {
            throw new UncheckedIOException(unusable);
        }
    }

    /** Pages and workbook of the maintenance card, by file name. */
    Map<String, byte[]> card(Path job, Card card, LocalDate issued) {
        Optional<FirstCertificate> first =
                FirstCertificate.of(office, job, card.warranty().first());
        PaperWords terms = first.map(FirstCertificate::terms).orElseGet(office::terms);
        CareCard printed = first.map(found -> CareCardPaper.of(terms, card, issued, found.certificate()))
                .orElseGet(() -> CareCardPaper.of(terms, card, issued));
        return print(
                card.warranty(),
                "maintenance",
                "card",
                Map.of("card", printed),
                info(card.warranty(), terms, issued, ""));
    }

    private Map<String, byte[]> print(
            Warranty warranty, String file, String template, Map<String, Object> model, PageInfo info) {
        String name = FileName.safe(warranty.number()) + "-" + file;
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(name + ".pdf", pages.print(template, model, info));
        files.put(
                name + ".xlsx",
                WorkbookPress.print(templates, template, model, info.issued(), Language.ofTag(info.language())));
        return files;
    }

    private static PageInfo info(Warranty warranty, PaperWords terms, LocalDate issued, String recordCode) {
        return new PageInfo(
                terms.language().tag(), warranty.parties().contractor().name(), issued, recordCode);
    }
}
