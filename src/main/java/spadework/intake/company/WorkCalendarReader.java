// SPDX-License-Identifier: Apache-2.0
package spadework.intake.company;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.company.Digger;
import spadework.company.WorkCalendar;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Counts;
import spadework.intake.value.Limits;
import spadework.intake.value.Shares;
import spadework.intake.value.TextWithUnit;
import spadework.intake.value.WrittenQuantity;
import spadework.job.WaitFor;
import spadework.job.Waits;
import spadework.measure.Unit;
import spadework.measure.UnreadableMeasure;

/** Reads when crews work, what work waits for, and what digging machines do. */
public final class WorkCalendarReader {
    public static final ValueKind<Waits> WAITS = ValueKind.object(WorkCalendarReader::waits);

    public static final ValueKind<BigDecimal> OVERTIME = hours("0", "8");

    public static final ValueKind<Integer> CREWS = Counts.between(1, 20);

    public static final ValueKind<WorkCalendar> CALENDAR = ValueKind.object(WorkCalendarReader::calendar);

    public static final ValueKind<Digger> DIGGER = ValueKind.object(fields -> new Digger(
            fields.get("bucket", quantity(Unit.CUBIC_YARD, "0.01", "10")),
            fields.get("fill", Shares.aboveZeroTo(120)),
            fields.get("bulkCycles", cycles()),
            fields.get("wallCycles", cycles()),
            fields.get("efficiency", Shares.aboveZeroTo(100)),
            fields.get("source", Texts.TEXT)));

    private static final Pattern DAYS = Pattern.compile("(\\d{1,2}) ?days?");
    private static final String ALLOWED = "whole days, from 0 days to 99 days, or \"unknown\"";

    private WorkCalendarReader() {}

    private static WorkCalendar calendar(ObjectFields fields) {
        WorkCalendar usual = WorkCalendar.USUAL;
        return new WorkCalendar(
                fields.get("crews", CREWS, usual.crews()),
                fields.get("hoursPerDay", hours("1", "16"), usual.hoursPerDay()),
                fields.get("workDays", new ValueKind<>("[\"monday\"]", WorkCalendarReader::workDays), usual.workDays()),
                fields.get("worksHolidays", Texts.YES_OR_NO, usual.worksHolidays()),
                fields.get(
                        "daysOff", new ValueKind<>("[\"2026-11-27\"]", WorkCalendarReader::daysOff), usual.daysOff()),
                fields.get("weather", Shares.fromZeroTo(100), usual.weather()),
                fields.get("standingDays", Counts.between(1, 99), usual.standingDays()),
                fields.get("waits", WAITS, Waits.NONE));
    }

    private static List<DayOfWeek> workDays(SourceNode node) {
        ValueKind<DayOfWeek> day = Choices.of(DayOfWeek.class);
        List<DayOfWeek> days = new ArrayList<>();
        for (SourceNode element : node.elements()) {
            DayOfWeek read = day.read(element);
            if (days.contains(read) && element.sheet().isSound(element.pointer())) {
                element.fault(element.written() + " a second time", "each day once", "take one of the two out");
            }
            days.add(read);
        }
        if (days.isEmpty() && !node.isSilent()) {
            node.fault("a week without a day of work", "at least one day", "add \"monday\"");
        }
        return days;
    }

    private static List<LocalDate> daysOff(SourceNode node) {
        List<LocalDate> days = new ArrayList<>();
        for (SourceNode element : node.elements()) {
            LocalDate read = CalendarDates.DATE.read(element);
            if (days.contains(read) && element.sheet().isSound(element.pointer())) {
                element.fault(element.written() + " a second time", "each day once", "take one of the two out");
            }
            days.add(read);
        }
        return days;
    }

    private static Waits waits(ObjectFields fields) {
        Map<WaitFor, OptionalInt> stated = new EnumMap<>(WaitFor.class);
        for (WaitFor what : WaitFor.values()) {
            fields.find(what.key(), days()).ifPresent(days -> stated.put(what, days));
        }
        return new Waits(stated);
    }

    private static ValueKind<OptionalInt> days() {
        return TextWithUnit.kind(
                ALLOWED, "2 days", WorkCalendarReader::days, new Limits<>("", days -> true), OptionalInt.empty());
    }

    private static OptionalInt days(String text) throws UnreadableMeasure {
        if (text.strip().equals("unknown")) {
            return OptionalInt.empty();
        }
        Matcher written = DAYS.matcher(text.strip());
        if (!written.matches()) {
            throw new UnreadableMeasure(ALLOWED, "write it as \"2 days\"");
        }
        return OptionalInt.of(Integer.parseInt(written.group(1)));
    }

    private static ValueKind<BigDecimal> hours(String least, String most) {
        return quantity(Unit.HOUR, least, most);
    }

    private static ValueKind<BigDecimal> quantity(Unit unit, String least, String most) {
        ValueKind<WrittenQuantity> kind = WrittenQuantity.in(unit, least, most);
        return new ValueKind<>(kind.example(), node -> kind.read(node).number());
    }

    private static ValueKind<BigDecimal> cycles() {
        return Counts.ratio(Limits.above(BigDecimal.ZERO, BigDecimal.valueOf(600), BigDecimal::toPlainString));
    }
}
