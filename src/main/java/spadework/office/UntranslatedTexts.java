// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.JobWarranty;
import spadework.job.Payment;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.wording.Language;

/** What the firm itself says on a homeowner's paper and has no words for in the homeowner's language. */
final class UntranslatedTexts {
    private UntranslatedTexts() {}

    static List<Finding> of(Job job, Company company) {
        Language language = job.head().language();
        if (language.isEnglish()) {
            return List.of();
        }
        Map<String, String> translated = company.letterhead().translated(language);
        List<String> left = texts(job, company)
                .filter(text -> !translated.containsKey(text))
                .distinct()
                .toList();
        return left.isEmpty()
                ? List.of()
                : List.of(new Finding(
                        "texts-untranslated",
                        Severity.ADVISE,
                        "",
                        Map.of("count", Integer.toString(left.size()), "first", left.get(0), "code", language.code()),
                        "common practice, no source"));
    }

    /** What a job says in the company's own words; what the job says itself was typed for its homeowner. */
    private static Stream<String> texts(Job job, Company company) {
        Stream<String> always = Stream.of(
                        Stream.of(company.license().label(), company.insurance().limits()),
                        company.letterhead().payTo().stream(),
                        JobWarranty.said(company.excluded(), job).stream(),
                        company.preparation().stream(),
                        company.terms().stream())
                .flatMap(texts -> texts);
        Stream<String> payments = job.payments().equals(company.payments())
                ? company.payments().stream().map(Payment::when)
                : Stream.of();
        Stream<String> warranty =
                job.contractTerms().warranty().equals(company.warranty()) ? texts(job.warranty()) : Stream.of();
        return Stream.of(always, payments, warranty).flatMap(texts -> texts);
    }

    private static Stream<String> texts(WarrantyTerms terms) {
        return Stream.of(
                        terms.parts().stream().flatMap(UntranslatedTexts::texts),
                        terms.notCovered().stream(),
                        terms.duties().stream())
                .flatMap(texts -> texts);
    }

    private static Stream<String> texts(WarrantyPart part) {
        return Stream.of(part.part(), part.promise());
    }
}
