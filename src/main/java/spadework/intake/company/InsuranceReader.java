// SPDX-License-Identifier: Apache-2.0
package spadework.intake.company;

import java.util.Optional;
import java.util.regex.Pattern;
import spadework.company.Insurance;
import spadework.intake.source.Excerpt;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.DollarAmounts;
import spadework.money.Dollars;

/** Reads the liability cover; the limit that is held against the law has to be the one that the papers print. */
final class InsuranceReader {
    static final ValueKind<Insurance> INSURANCE = ValueKind.object(InsuranceReader::insurance);

    private InsuranceReader() {}

    private static Insurance insurance(ObjectFields fields) {
        String limits = fields.get("limits", Texts.LABEL);
        Optional<Dollars> each = fields.find("eachOccurrence", DollarAmounts.ABOVE_ZERO);
        if (!fields.node().isSilent() && each.filter(sum -> !names(limits, sum)).isPresent()) {
            String sum = each.orElseThrow().text();
            fields.node()
                    .at("eachOccurrence")
                    .fault(
                            "\"" + sum + "\", which does not stand in \"limits\", " + Excerpt.quoted(limits),
                            "the limit for each occurrence as \"limits\" names it",
                            "read both from the certificate");
        }
        return new Insurance(
                fields.get("carrier", Texts.LABEL),
                fields.get("policy", Texts.LABEL),
                limits,
                fields.get("until", CalendarDates.DATE),
                each,
                fields.find("improperWork", DollarAmounts.ABOVE_ZERO),
                fields.find("phone", Texts.LABEL),
                fields.find("workers", Texts.LABEL));
    }

    /** Whole dollars may stand without cents. */
    private static boolean names(String limits, Dollars sum) {
        String text = sum.text();
        String whole = text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
        return Pattern.compile(Pattern.quote(whole) + "(\\.00)?(?![.,]?\\d)")
                .matcher(limits)
                .find();
    }
}
