// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import spadework.company.Company;
import spadework.company.ContactPerson;
import spadework.job.LimitKind;
import spadework.job.LocateTicket;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.paperwork.Dossier;
import spadework.wording.Language;
import spadework.wording.Wording;

/** Who answers for the trench, and the numbers that a crew needs at once. */
final class CrewCalls {
    private static final Wording WORDS = Wording.beside(CrewCalls.class);
    private static final Pattern GAS = Pattern.compile("(?iu)\\bgas\\b");

    private CrewCalls() {}

    static List<CrewCall> of(Dossier dossier, Language language) {
        Company company = dossier.company();
        Site site = dossier.job().site();
        String office = company.contactPerson()
                .map(person -> WORDS.in(language)
                        .get("call.office-person", company.phone(), person.name(), number(company, person)))
                .orElse(company.phone());
        List<CrewCall> calls = new ArrayList<>();
        calls.add(new CrewCall(WORDS.in(language).get("call.leader"), ""));
        calls.add(new CrewCall(WORDS.in(language).get("call.competent"), ""));
        calls.add(new CrewCall(
                WORDS.in(language).get("call.emergency"),
                WORDS.in(language).get("call.address", site.address().text())));
        calls.add(new CrewCall(WORDS.in(language).get("call.office"), office));
        calls.add(new CrewCall(
                WORDS.in(language).get("call.marks"),
                site.locateTicket()
                        .map(ticket -> WORDS.in(language).get("call.ticket", ticket.number()))
                        .orElseGet(() -> WORDS.in(language).get("call.no-ticket"))));
        calls.add(new CrewCall(
                WORDS.in(language).get("call.valid"),
                site.locateTicket()
                        .flatMap(LocateTicket::until)
                        .map(language::day)
                        .orElse("")));
        owners(site).forEach(owner -> calls.add(new CrewCall(WORDS.in(language).get("call." + owner), "")));
        return calls;
    }

    private static String number(Company company, ContactPerson person) {
        return person.phone().orElse(company.phone());
    }

    /** Whose lines lie near: the gas company by name, whoever else owns one. */
    private static List<String> owners(Site site) {
        return site.limits().stream()
                .filter(limit -> limit.kind() == LimitKind.UTILITY)
                .map(limit -> isGas(limit) ? "gas" : "line")
                .distinct()
                .toList();
    }

    private static boolean isGas(SiteLimit limit) {
        return GAS.matcher(limit.note()).find();
    }
}
