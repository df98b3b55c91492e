// SPDX-License-Identifier: Apache-2.0
package spadework.intake.law;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.BaseFile;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Counts;
import spadework.intake.value.DollarAmounts;
import spadework.intake.value.Limits;
import spadework.intake.value.TextWithUnit;
import spadework.law.CancelRule;
import spadework.law.Content;
import spadework.law.Counsel;
import spadework.law.CoverKind;
import spadework.law.DayCount;
import spadework.law.DepositCap;
import spadework.law.DepositKind;
import spadework.law.LeastCover;
import spadework.law.LegalNotice;
import spadework.law.NoticeCase;
import spadework.law.NoticePlace;
import spadework.law.RequiredContent;
import spadework.law.RuleSource;
import spadework.law.StateHoliday;
import spadework.law.StateRules;
import spadework.measure.UnreadableMeasure;
import spadework.money.Dollars;

/**
 * Reads the rules of states. A pack for a state that is known already changes what it names and keeps the rest; one for
 * a new state has to be whole.
 */
public final class StateRuleReader {
    static final List<String> STATUSES = List.of("R", "RX", "RS", "M");

    private static final Pattern SHARE = Pattern.compile("([1-9]\\d{0,2})/([1-9]\\d{0,2})");
    private static final Dollars CENT = Dollars.of("0.01");
    static final ValueKind<String> STATUS = Choices.words(STATUSES);
    private static final ValueKind<int[]> FRACTION = TextWithUnit.kind(
            "a share as two whole numbers",
            "1/3",
            StateRuleReader::fraction,
            new Limits<>("from 1/999 to the whole", share -> share[0] <= share[1]),
            new int[] {1, 1});

    private final Map<String, StateRules> known;

    StateRuleReader(Map<String, StateRules> known) {
        this.known = known;
    }

    /** The packs of a file by state, with the known ones that it does not name. */
    Map<String, StateRules> read(SourceNode root) {
        Map<String, StateRules> all = new LinkedHashMap<>(known);
        ValueKind.object(fields -> {
                    fields.find("$schema", Texts.TEXT);
                    return fields.filled("packs", ValueKind.object(this::pack));
                })
                .read(root)
                .forEach(pack -> all.put(pack.state(), pack));
        return all;
    }

    private StateRules pack(ObjectFields fields) {
        String state = fields.get("state", Texts.LABEL);
        Optional<StateRules> base = Optional.ofNullable(known.get(state));
        BaseFile<StateRules> before = new BaseFile<>(base);
        Optional<Dollars> threshold = fields.find("threshold", DollarAmounts.ABOVE_ZERO);
        Map<String, String> facts =
                fields.find("facts", ValueKind.object(StateRuleReader::facts)).orElse(Map.of());
        Map<String, String> allFacts =
                new LinkedHashMap<>(base.map(StateRules::facts).orElse(Map.of()));
        allFacts.putAll(facts);
        return new StateRules(
                state,
                before.value(fields, "title", Texts.LABEL, StateRules::title),
                threshold.or(() -> base.flatMap(StateRules::threshold)),
                fields.get(
                        "atThreshold",
                        Texts.YES_OR_NO,
                        base.map(StateRules::atThreshold).orElse(false)),
                before.value(fields, "deposit", ValueKind.object(StateRuleReader::deposit), StateRules::deposit),
                before.value(
                        fields, "cancel", ValueKind.object(inside -> cancel(inside, allFacts)), StateRules::cancel),
                fields.find("contents", list(ValueKind.object(StateRuleReader::content)))
                        .orElseGet(() -> base.map(StateRules::contents).orElse(List.of())),
                notices(fields, base.map(StateRules::notices).orElse(List.of())),
                ReleaseReader.read(fields, base.map(StateRules::releases).orElse(List.of())),
                fields.find("insurance", list(ValueKind.object(StateRuleReader::leastCover)))
                        .orElseGet(() -> base.map(StateRules::insurance).orElse(List.of())),
                fields.find("leastType", Counts.between(6, 10)).or(() -> base.flatMap(StateRules::leastType)),
                new RuleSource(
                        allFacts,
                        fields.find("notes", list(Texts.TEXT))
                                .orElseGet(
                                        () -> base.map(rules -> rules.source().notes())
                                                .orElse(List.of())),
                        fields.find("citations", list(Texts.TEXT))
                                .orElseGet(() -> base.map(StateRules::citations).orElse(List.of())),
                        before.value(fields, "asOf", CalendarDates.DATE, rules -> LocalDate.parse(rules.asOf()))
                                .toString(),
                        fields.find("counsel", ValueKind.object(StateRuleReader::counsel))
                                .or(() -> base.flatMap(rules -> rules.source().counsel()))));
    }

    private static Counsel counsel(ObjectFields fields) {
        return new Counsel(fields.get("by", Texts.LABEL), fields.get("on", CalendarDates.DATE));
    }

    private static <T> ValueKind<List<T>> list(ValueKind<T> kind) {
        return new ValueKind<>(
                "[]", node -> node.elements().stream().map(kind::read).toList());
    }

    private static DepositCap deposit(ObjectFields fields) {
        fields.find("note", Texts.TEXT);
        Optional<Dollars> above = fields.find("above", DollarAmounts.ABOVE_ZERO).map(price -> price.plus(CENT));
        int[] share = fields.find("share", FRACTION).orElse(new int[] {0, 1});
        return new DepositCap(
                fields.get("kind", Choices.of(DepositKind.class)),
                share[0],
                share[1],
                fields.find("sum", DollarAmounts.ABOVE_ZERO),
                fields.find("from", DollarAmounts.ABOVE_ZERO).or(() -> above),
                fields.get("valueOfWork", Texts.YES_OR_NO, false));
    }

    private static CancelRule cancel(ObjectFields fields, Map<String, String> facts) {
        Optional<Integer> seniorDays = fields.find("seniorDays", Counts.between(1, 60));
        Optional<Integer> seniorAge = fields.find("seniorAge", Counts.between(18, 120));
        if (seniorDays.isPresent() != seniorAge.isPresent() && !fields.node().isSilent()) {
            fields.node()
                    .fault(
                            seniorAge.isPresent() ? "\"seniorAge\" alone" : "\"seniorDays\" alone",
                            "both of \"seniorAge\" and \"seniorDays\", or neither",
                            "add the other one, or take this one out");
        }
        return new CancelRule(
                fields.get("days", Counts.between(1, 60)),
                seniorDays,
                seniorAge,
                fields.find("count", Choices.of(DayCount.class)),
                facts.getOrDefault("cancel", "M"),
                fields.find("disasterDays", Counts.between(1, 60)),
                fields.get("fromReceipt", Texts.YES_OR_NO, false),
                fields.list("holidays", ValueKind.object(StateRuleReader::holiday)),
                fields.find("citation", Texts.TEXT));
    }

    private static StateHoliday holiday(ObjectFields fields) {
        String name = fields.get("name", Texts.LABEL);
        Optional<Integer> month = fields.find("month", Counts.between(1, 12));
        Optional<Integer> day = fields.find("day", Counts.between(1, 31));
        Optional<DayOfWeek> weekday = fields.find("weekday", Choices.of(DayOfWeek.class));
        Optional<Integer> nth = fields.find("nth", Counts.between(1, 5));
        Optional<Integer> easter = fields.find("fromEaster", Counts.between(-60, 60));
        int after = fields.find("after", Counts.between(0, 6)).orElse(0);
        StateHoliday.Rule rule = new StateHoliday.FromEaster(easter.orElse(0));
        if (month.isPresent() && day.isPresent()) {
            rule = new StateHoliday.OnDate(month.get(), day.get());
        } else if (month.isPresent() && weekday.isPresent() && nth.isPresent()) {
            rule = new StateHoliday.OnWeekday(month.get(), weekday.get(), nth.get(), after);
        } else if (easter.isEmpty() && !fields.node().isSilent()) {
            fields.node()
                    .fault(
                            "a holiday without its day",
                            "\"month\" with \"day\", \"month\" with \"weekday\" and \"nth\", or \"fromEaster\"",
                            "say on which day it falls");
        }
        return new StateHoliday(name, rule, fields.get("status", STATUS));
    }

    private static LeastCover leastCover(ObjectFields fields) {
        return new LeastCover(
                fields.get("cover", Choices.of(CoverKind.class)),
                fields.get("least", DollarAmounts.ABOVE_ZERO),
                fields.find("from", DollarAmounts.ABOVE_ZERO),
                fields.get("status", STATUS),
                fields.get("citation", Texts.TEXT));
    }

    private static RequiredContent content(ObjectFields fields) {
        return new RequiredContent(
                fields.get("content", Choices.of(Content.class)),
                fields.get("asks", Texts.TEXT),
                fields.get("status", STATUS),
                fields.find("changesOver", DollarAmounts.ABOVE_ZERO));
    }

    private static Map<String, String> facts(ObjectFields fields) {
        Map<String, String> facts = new LinkedHashMap<>();
        for (String fact : List.of("threshold", "deposit", "cancel", "type", "contents")) {
            fields.find(fact, STATUS).ifPresent(status -> facts.put(fact, status));
        }
        return facts;
    }

    /** Those of the file take the place of known ones with their name, key by key; new ones follow. */
    private static List<LegalNotice> notices(ObjectFields fields, List<LegalNotice> base) {
        Map<String, LegalNotice> all = new LinkedHashMap<>();
        base.forEach(notice -> all.put(notice.name(), notice));
        fields.list("notices", ValueKind.object(inside -> notice(inside, all)))
                .forEach(notice -> all.put(notice.name(), notice));
        return List.copyOf(all.values());
    }

    private static LegalNotice notice(ObjectFields fields, Map<String, LegalNotice> known) {
        String name = fields.get("notice", Texts.LABEL);
        Optional<LegalNotice> base = Optional.ofNullable(known.get(name));
        BaseFile<LegalNotice> before = new BaseFile<>(base);
        return new LegalNotice(
                name,
                serves(fields, base.map(LegalNotice::serves).orElse(Set.of())),
                before.value(fields, "place", Choices.of(NoticePlace.class), LegalNotice::place),
                before.value(fields, "points", Counts.between(6, 72), LegalNotice::points),
                fields.get("bold", Texts.YES_OR_NO, base.map(LegalNotice::bold).orElse(false)),
                fields.get(
                        "capitals",
                        Texts.YES_OR_NO,
                        base.map(LegalNotice::capitals).orElse(false)),
                fields.find("wording", Texts.TEXT).or(() -> base.flatMap(LegalNotice::wording)),
                fields.get(
                        "prescribed",
                        Texts.YES_OR_NO,
                        base.map(LegalNotice::prescribed).orElse(true)),
                fields.find("above", DollarAmounts.ABOVE_ZERO).or(() -> base.flatMap(LegalNotice::above)),
                fields.get(
                        "when",
                        Choices.of(NoticeCase.class),
                        base.map(LegalNotice::when).orElse(NoticeCase.ALWAYS)),
                before.value(fields, "status", STATUS, LegalNotice::status),
                before.value(fields, "citation", Texts.TEXT, LegalNotice::citation));
    }

    /** A notice that is known keeps what it serves where the file is silent; a new one has to say it. */
    private static Set<Content> serves(ObjectFields fields, Set<Content> known) {
        ValueKind<Content> kind = Choices.of(Content.class);
        Optional<Content> first =
                known.isEmpty() ? Optional.of(fields.get("serves", kind)) : fields.find("serves", kind);
        Set<Content> all = EnumSet.noneOf(Content.class);
        first.ifPresentOrElse(all::add, () -> all.addAll(known));
        all.addAll(fields.list("alsoServes", kind));
        return all;
    }

    private static int[] fraction(String text) throws UnreadableMeasure {
        Matcher share = SHARE.matcher(text.strip());
        if (!share.matches()) {
            throw new UnreadableMeasure("a share as two whole numbers", "write it as \"1/3\"");
        }
        return new int[] {Integer.parseInt(share.group(1)), Integer.parseInt(share.group(2))};
    }
}
