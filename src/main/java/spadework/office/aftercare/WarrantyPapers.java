// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.office.FirstCertificate;
import spadework.office.Office;
import spadework.office.PaperPrinter;
import spadework.office.SignedPapers;
import spadework.office.files.FileName;
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
        PageInfo info = info(warranty, issued, mark.text());
        Map<String, Object> model = FirstCertificate.of(office, job, warranty.first())
                .map(first -> Map.<String, Object>of(
                        "reissue", ReissuePaper.of(warranty, before, claims, issued, first.certificate()),
                        "plan", first.plan()))
                .orElseGet(() -> Map.of("reissue", ReissuePaper.of(warranty, before, claims, issued)));
        Map<String, byte[]> files = print(warranty, "warranty", "reissue", model, info);
        try {
            return SignedPapers.of(files, issued);
        } catch (IOException unusable) {
            throw new UncheckedIOException(unusable);
        }
    }

    /** Pages and workbook of the maintenance card, by file name. */
    Map<String, byte[]> card(Path job, Card card, LocalDate issued) {
        CareCard printed = FirstCertificate.of(office, job, card.warranty().first())
                .map(first -> CareCardPaper.of(card, issued, first.certificate()))
                .orElseGet(() -> CareCardPaper.of(card, issued));
        return print(
                card.warranty(), "maintenance", "card", Map.of("card", printed), info(card.warranty(), issued, ""));
    }

    private Map<String, byte[]> print(
            Warranty warranty, String file, String template, Map<String, Object> model, PageInfo info) {
        String name = FileName.safe(warranty.number()) + "-" + file;
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(name + ".pdf", pages.print(template, model, info));
        files.put(name + ".xlsx", WorkbookPress.print(templates, template, model, info.issued()));
        return files;
    }

    private static PageInfo info(Warranty warranty, LocalDate issued, String recordCode) {
        return new PageInfo(
                PaperPrinter.LANGUAGE, warranty.parties().contractor().name(), issued, recordCode);
    }
}
