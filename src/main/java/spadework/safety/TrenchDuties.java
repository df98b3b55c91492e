package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.finding.Finding;
import spadework.job.Protection;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.SlopeTable;

/** What a trench of a depth asks for: 29 CFR 1926.651 and .652 (T-13 to T-26). It never says that one is safe. */
public final class TrenchDuties {
    private static final Length LADDER_FROM = Length.ofFeet(4);
    private static final Length ENGINEER_OVER = Length.ofFeet(20);

    private TrenchDuties() {}

    /**
     * Protection, ladder and air of one trench.
     *
     * @param about the wall it lies at
     * @param depth grade to the trench's bottom at the deepest place
     * @param bank the outer bank as it is to be dug
     */
    public static List<Finding> at(String about, Length depth, Bank bank) {
        List<Finding> found = new ArrayList<>();
        found.add(protection(about, depth, bank));
        if (depth.compareTo(LADDER_FROM) >= 0) {
            found.add(must("ladder", about, "29 CFR 1926.651(c)(2), 1926.1053(b)(1)", "depth", depth.text()));
        }
        if (depth.compareTo(LADDER_FROM) > 0) {
            found.add(advise("air-test", about, "29 CFR 1926.651(g)(1)", "depth", depth.text()));
        }
        return found;
    }

    /**
     * What every trench asks for.
     *
     * @param state where it is dug, as the finding names it
     */
    public static List<Finding> everywhere(String state) {
        return List.of(
                must("spoil-back", "", "29 CFR 1926.651(j)(2)"),
                must("daily-inspection", "", "29 CFR 1926.651(k)(1)"),
                must("not-below-footing", "", "29 CFR 1926.651(i) (from memory); IBC 1803.1"),
                advise("state-plan", state, "29 CFR 1952 (from memory)"));
    }

    private static Finding protection(String about, Length depth, Bank bank) {
        String cite = "29 CFR 1926.652(a)(1)";
        boolean deep = depth.compareTo(Bank.PROTECTED_FROM) >= 0;
        if (depth.compareTo(ENGINEER_OVER) > 0) {
            return stop("trench-over-20", about, "29 CFR 1926.652(b)", "depth", depth.text());
        }
        if (bank.protection() == Protection.UPRIGHT) {
            return deep
                    ? stop("upright-too-deep", about, cite, "depth", depth.text())
                    : must("upright-shallow", about, cite, "depth", depth.text());
        }
        if (bank.protection() == Protection.SHIELDED) {
            return must("shield", about, cite + "; 1926.652(g)", "depth", depth.text());
        }
        double run = bank.slope().number();
        double lawful = SlopeTable.run(bank.soil());
        if (run < lawful) {
            String slopes = SlopeTable.SOURCE + "; 1926.652(b)(1)";
            String[] figures = {"depth", depth.text(), "run", tidy(run), "lawful", tidy(lawful)};
            return deep
                    ? stop("bank-too-steep", about, slopes, figures)
                    : must("bank-too-steep", about, slopes, figures);
        }
        return must(
                "slope-back",
                about,
                SlopeTable.SOURCE,
                "depth",
                depth.text(),
                "run",
                tidy(run),
                "out",
                Length.ofFeet(run * depth.feet()).text());
    }

    private static String tidy(double run) {
        return String.format(Locale.ROOT, "%.2f", run).replaceAll("\\.?0+$", "");
    }
}
