// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.reason.Reason;
import spadework.warranty.Contractor;
import spadework.warranty.CoveredPart;
import spadework.warranty.CoveredRun;
import spadework.warranty.OwnerTerms;
import spadework.warranty.Warranty;
import spadework.warranty.WarrantyCoverage;
import spadework.warranty.WarrantyParties;

/** A warranty as it stands in a line of the register. */
final class WarrantyJson {
    private WarrantyJson() {}

    static Map<String, Object> write(Warranty warranty) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("number", warranty.number());
        warranty.reissueOf().ifPresent(first -> object.put("reissueOf", first));
        object.put("job", warranty.job());
        object.put("owners", warranty.parties().owners());
        object.put("address", warranty.parties().address());
        object.put(
                "walls",
                warranty.coverage().walls().stream().map(WarrantyJson::covered).toList());
        object.put(
                "runs",
                warranty.coverage().runs().stream().map(WarrantyJson::covered).toList());
        object.put(
                "parts",
                warranty.coverage().parts().stream().map(WarrantyJson::part).toList());
        object.put("replyDays", warranty.terms().replyDays());
        object.put("visitDays", warranty.terms().visitDays());
        object.put("findingDays", warranty.terms().findingDays());
        object.put("beginDays", warranty.terms().beginDays());
        object.put("transfers", warranty.terms().transfers());
        object.put("transferNoticeDays", warranty.terms().transferNoticeDays());
        object.put("notCovered", warranty.coverage().notCovered());
        object.put("duties", warranty.terms().duties());
        object.put("contractor", contractor(warranty.parties().contractor()));
        return object;
    }

    static Warranty read(JsonMembers members) throws IOException {
        try {
            return new Warranty(
                    members.text("number"),
                    members.maybe("reissueOf"),
                    members.text("job"),
                    new WarrantyParties(
                            members.texts("owners"), members.text("address"), contractor(members.member("contractor"))),
                    new WarrantyCoverage(
                            members.list("walls", WarrantyJson::covered),
                            members.list("runs", WarrantyJson::covered),
                            members.list("parts", WarrantyJson::part),
                            members.texts("notCovered")),
                    new OwnerTerms(
                            members.whole("replyDays"),
                            members.whole("visitDays", OwnerTerms.VISIT_DAYS_BEFORE),
                            members.whole("findingDays", OwnerTerms.FINDING_DAYS_BEFORE),
                            members.whole("beginDays", OwnerTerms.BEGIN_DAYS_BEFORE),
                            members.whole("transfers"),
                            members.whole("transferNoticeDays"),
                            members.texts("duties")));
        } catch (IllegalArgumentException impossible) {
            throw new IOException(Reason.of(impossible));
        }
    }

    private static Map<String, Object> covered(CoveredRun covered) {
        return ordered(List.of("label", covered.label(), "what", covered.what(), "length", covered.length()));
    }

    private static CoveredRun covered(JsonMembers members) throws IOException {
        return new CoveredRun(members.text("label"), members.text("what"), members.text("length"));
    }

    private static Map<String, Object> part(CoveredPart part) {
        return ordered(List.of(
                "part", part.part(),
                "promise", part.promise(),
                "years", part.years(),
                "firstDay", part.firstDay().toString(),
                "lastDay", part.lastDay().toString()));
    }

    private static CoveredPart part(JsonMembers members) throws IOException {
        return new CoveredPart(
                members.text("part"),
                members.text("promise"),
                members.whole("years"),
                members.date("firstDay"),
                members.date("lastDay"));
    }

    private static Map<String, Object> contractor(Contractor firm) {
        return ordered(List.of(
                "name", firm.name(),
                "address", firm.address(),
                "phone", firm.phone(),
                "email", firm.email(),
                "license", firm.license()));
    }

    private static Contractor contractor(JsonMembers members) throws IOException {
        return new Contractor(
                members.text("name"),
                members.text("address"),
                members.text("phone"),
                members.text("email"),
                members.text("license"));
    }

    private static Map<String, Object> ordered(List<Object> namesAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.size(); i += 2) {
            object.put(namesAndValues.get(i).toString(), namesAndValues.get(i + 1));
        }
        return object;
    }
}
