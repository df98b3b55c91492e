package spadework.paperwork;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.company.Company;
import spadework.job.Salesperson;
import spadework.job.Signing;

/** Which contents the printed contract holds, given what the job and the company say. */
final class ContractContents {
    /** A content that some law asks for. Those that name a key are there only if that key is given. */
    enum Content {
        HEADING(""),
        PARTIES(""),
        LICENCE_NUMBER(""),
        LICENCE_CLASS("licence/classification"),
        LICENCE_END("licence/until"),
        BOND("bond"),
        TAX_NUMBER("taxId"),
        AFFILIATES("affiliates"),
        SALESPERSON("signing/salesperson"),
        SALESPERSON_LICENCE("signing/salesperson/licence"),
        TRANSACTION_DATE(""),
        HOUSE(""),
        WORK_AND_MATERIALS(""),
        DOCUMENTS(""),
        PRICE(""),
        FINANCE_CHARGE(""),
        DEPOSIT(""),
        PAYMENTS(""),
        SPECIAL_ORDER("signing/specialOrder"),
        SECURITY_INTEREST(""),
        START_AND_COMPLETION(""),
        CONTINGENCIES(""),
        ESSENCE("signing/dateIsEssential"),
        CHANGES(""),
        NOT_INCLUDED(""),
        PERMITS("signing/permits"),
        SUBCONTRACTORS("signing/subcontractors"),
        LIABILITY_INSURANCE(""),
        INSURER_PHONE("insurance/phone"),
        WORKERS_COVER("insurance/workers"),
        DEPOSIT_HELD("signing/depositHeld"),
        WARRANTY(""),
        CANCELLATION_STATEMENT(""),
        CANCELLATION_FORM(""),
        LAST_DAY(""),
        HELP_TO_CANCEL(""),
        TOLD_ALOUD(""),
        SIGNATURES("");

        private final String key;

        Content(String key) {
            this.key = key;
        }

        /** Where job.json or company.json gives it; empty where the paper always holds it. */
        String key() {
            return key;
        }
    }

    private ContractContents() {}

    static Set<Content> of(Signing signing, Company company) {
        Set<Content> held = EnumSet.allOf(Content.class);
        inputs(signing, company).forEach((content, input) -> {
            if (input.isEmpty()) {
                held.remove(content);
            }
        });
        return held;
    }

    private static Map<Content, Optional<?>> inputs(Signing signing, Company company) {
        Map<Content, Optional<?>> inputs = new EnumMap<>(Content.class);
        inputs.put(Content.LICENCE_CLASS, company.licence().classification());
        inputs.put(Content.LICENCE_END, company.licence().until());
        inputs.put(Content.BOND, company.bond());
        inputs.put(Content.TAX_NUMBER, company.taxId());
        inputs.put(Content.AFFILIATES, company.affiliates());
        inputs.put(Content.SALESPERSON, signing.salesperson());
        inputs.put(Content.SALESPERSON_LICENCE, signing.salesperson().flatMap(Salesperson::licence));
        inputs.put(Content.SPECIAL_ORDER, signing.specialOrder());
        inputs.put(Content.ESSENCE, signing.dateIsEssential());
        inputs.put(Content.PERMITS, signing.permits());
        inputs.put(Content.SUBCONTRACTORS, signing.subcontractors());
        inputs.put(Content.INSURER_PHONE, company.insurance().phone());
        inputs.put(Content.WORKERS_COVER, company.insurance().workers());
        inputs.put(Content.DEPOSIT_HELD, signing.depositHeld());
        return inputs;
    }
}
