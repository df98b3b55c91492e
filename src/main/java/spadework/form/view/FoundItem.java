// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import spadework.draft.Assumption;
import spadework.draft.Assumptions;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.form.kit.FaultWords;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;
import spadework.form.session.LikelyFixes;
import spadework.form.session.PointerNames;
import spadework.reason.Reason;

/**
 * Something found about a job, or wrong with it.
 *
 * @param grade fault, assumed, or the severity of a finding in small letters
 * @param cause the place of the job that it comes from
 * @param assumption what would be written there, where something is assumed
 * @param fixes what may be written there instead of what is wrong, the likeliest first
 */
public record FoundItem(
        Group group, String grade, String text, String cause, Optional<Assumption> assumption, List<String> fixes) {
    /** Findings about what nobody has looked at yet. */
    private static final Pattern AT_THE_HOUSE = Pattern.compile(
            ".*-(unmeasured|unknown|unseen|confirm|typed)|soil-not-.*|.*-missing|private-lines|year-unknown");

    /** Who has to do something about it. */
    public enum Group {
        FIX,
        ASSUMED,
        HOUSE,
        CREW,
        OFFICE;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** All of a job, by who has to act and then gravest first. */
    public static List<FoundItem> of(JobSession session) {
        List<FoundItem> found = new ArrayList<>();
        session.broken().ifPresent(thrown -> found.add(item(Group.FIX, "fault", Reason.of(thrown), "")));
        Optional<Assumptions> assumed = session.assumed();
        for (Fault fault : session.faults()) {
            String place = fault.place().pointer();
            if (assumed.flatMap(all -> all.at(place)).isEmpty()) {
                List<String> fixes = LikelyFixes.of(session, fault);
                String text = where(fault, session) + FaultWords.of(fault);
                found.add(new FoundItem(Group.FIX, "fault", text, place, Optional.empty(), fixes));
            }
        }
        for (Assumption one : assumed.map(Assumptions::all).orElse(List.of())) {
            String value = Messages.or("choice." + one.value(), one.value());
            String text = one.kind() == Assumption.Kind.UNWRITTEN
                    ? Messages.of("found.unwritten", PointerNames.named(one.place(), session.draft()))
                    : Messages.of("found.assumed", PointerNames.named(one.place(), session.draft()), value);
            found.add(new FoundItem(Group.ASSUMED, "assumed", text, one.place(), Optional.of(one), List.of()));
        }
        for (Finding finding : session.findings()) {
            boolean answered = session.isAnswered(finding);
            String grade = answered ? "answered" : finding.severity().name().toLowerCase(Locale.ROOT);
            String text = session.office().what(finding, Messages.language()) + " "
                    + session.office().action(finding, Messages.language()) + " [" + finding.citation() + "]";
            found.add(item(group(finding, session), grade, text, FindingPointers.of(finding, session.draft())));
        }
        found.sort(Comparator.comparing(FoundItem::group));
        if (!session.findings().isEmpty()) {
            found.add(item(Group.OFFICE, "deference", session.office().deference(Messages.language()), "/walls"));
        }
        return found;
    }

    private static FoundItem item(Group group, String grade, String text, String cause) {
        return new FoundItem(group, grade, text, cause, Optional.empty(), List.of());
    }

    private static Group group(Finding finding, JobSession session) {
        if (finding.severity() == Severity.STOP && !session.isAnswered(finding)) {
            return Group.FIX;
        }
        if (AT_THE_HOUSE.matcher(finding.id()).matches()) {
            return Group.HOUSE;
        }
        return session.bid().filter(made -> made.isForCrew(finding)).isPresent() ? Group.CREW : Group.OFFICE;
    }

    /** The file, where it is not the job's own, and the name of the field. */
    private static String where(Fault fault, JobSession session) {
        String file = fault.place().file().replaceAll(".*[/\\\\]", "");
        String pointer = fault.place().pointer();
        String name = PointerNames.named(pointer, session.draft());
        return file.equals("job.json") ? name + ": " : Messages.of("found.file", file, name) + ": ";
    }

    boolean isGrave() {
        return grade.equals("fault") || grade.equals("stop");
    }
}
