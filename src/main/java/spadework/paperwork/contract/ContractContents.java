// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.job.Job;
import spadework.job.Payment;
import spadework.job.Salesperson;
import spadework.job.Signing;
import spadework.law.Content;
import spadework.law.LegalNotice;

/**
 * Which contents the printed contract holds, given what the job and the company say. Some stand in the template and are
 * always there, some are there if their input is, and some only as a notice whose wording the rules carry.
 */
public final class ContractContents {
    private static final Set<Content> ONLY_AS_NOTICE = EnumSet.of(
            Content.ATTORNEY_GENERAL_TELEPHONE,
            Content.CONSUMER_PAMPHLET,
            Content.CONSUMER_STATEMENT_ACKNOWLEDGED,
            Content.DEFECT_CLAIM_NOTICE,
            Content.DISCLOSURE_BEFORE_SIGNING,
            Content.EXCESS_COST_NOTICE,
            Content.GUARANTY_FUND_NOTICE,
            Content.HOMESTEAD_WARNING,
            Content.LICENSING_BOARD_NOTICE,
            Content.LIEN_NOTICE,
            Content.RETAINAGE_NOTICE);
    private static final Pattern BOX = Pattern.compile("(?i)\\bp\\.? ?o\\.? ?box\\b");
    private static final Pattern WAIVER = Pattern.compile("(?i)\\bwaiv|\\bconfess");
    private static final Pattern ARBITRATION = Pattern.compile("(?i)\\barbitrat|\\bjury\\b");
    private static final Pattern SATISFIED =
            Pattern.compile("(?i)\\bsign(ed)? off|\\bsatisf|\\baccepted\\b|\\bapproved?\\b");
    private static final Pattern ESTIMATE = Pattern.compile("(?i)\\bestimate");

    private ContractContents() {}

    /**
     * What the contract holds.
     *
     * @param notices those that are due, with or without wording
     */
    static Set<Content> of(Job job, Company company, Signing signing, List<LegalNotice> notices) {
        Set<Content> holds = EnumSet.complementOf(EnumSet.copyOf(ONLY_AS_NOTICE));
        given(job, company, signing).forEach((content, given) -> {
            if (!given) {
                holds.remove(content);
            }
        });
        notices.stream()
                .filter(notice -> notice.wording().isPresent())
                .flatMap(notice -> notice.serves().stream())
                .filter(ONLY_AS_NOTICE::contains)
                .forEach(holds::add);
        return holds;
    }

    private static Map<Content, Boolean> given(Job job, Company company, Signing signing) {
        Map<Content, Boolean> given = new EnumMap<>(Content.class);
        given.put(Content.AFFILIATES, company.affiliates().isPresent());
        given.put(Content.BOND_AMOUNT, company.bond().isPresent());
        given.put(
                Content.COSTS_NOT_COVERED,
                !company.excluded().isEmpty() || !job.excluded().isEmpty());
        given.put(Content.DATE_OF_THE_ESSENCE, signing.dateIsEssential().isPresent());
        given.put(Content.ESCROW_OR_BOND, signing.financing().depositHeld().isPresent());
        given.put(Content.FINANCE_CHARGE, !signing.financing().financed());
        given.put(Content.INSURANCE_CERTIFICATE, company.insurance().phone().isPresent());
        given.put(Content.INSURER_TELEPHONE, company.insurance().phone().isPresent());
        given.put(Content.LICENSE_CLASS, company.license().classification().isPresent());
        given.put(Content.LICENSE_EXPIRY, company.license().until().isPresent());
        given.put(Content.PERMITS, signing.permits().isPresent());
        given.put(Content.SALESPERSON, signing.sale().salesperson().isPresent());
        given.put(
                Content.SALESPERSON_LICENSE,
                signing.sale().salesperson().flatMap(Salesperson::license).isPresent());
        given.put(
                Content.SELLER_NAME_AND_ADDRESS,
                !says(BOX, Stream.of(company.address().street())));
        given.put(Content.SPECIAL_ORDER_COST, signing.financing().specialOrder().isPresent());
        given.put(Content.SUBCONTRACTORS, signing.subcontractors().isPresent());
        given.put(Content.TAXPAYER_NUMBER, company.taxId().isPresent());
        given.put(Content.WARRANTY, !job.warranty().parts().isEmpty());
        given.put(Content.WORKERS_COMPENSATION, company.insurance().workers().isPresent());
        List<String> terms =
                Stream.concat(company.terms().stream(), job.terms().stream()).toList();
        given.put(Content.ESTIMATE_CHARGE, says(ESTIMATE, terms.stream()));
        given.put(Content.FINAL_PAYMENT_WHEN_SATISFIED, isLastAtYourWord(job.payments()));
        given.put(Content.MAKE_OF_MATERIALS, !signing.materials().isEmpty());
        given.put(Content.NO_WAIVER, !says(WAIVER, terms.stream()));
        given.put(Content.NO_ARBITRATION_CLAUSE, !says(ARBITRATION, terms.stream()));
        return given;
    }

    /** Whether the last payment waits for the buyer's own yes to the finished work. */
    private static boolean isLastAtYourWord(List<Payment> payments) {
        return payments.stream()
                .skip(Math.max(0, payments.size() - 1L))
                .anyMatch(last ->
                        !last.atSigning() && SATISFIED.matcher(last.when()).find());
    }

    private static boolean says(Pattern words, Stream<String> texts) {
        return texts.anyMatch(text -> words.matcher(text).find());
    }
}
