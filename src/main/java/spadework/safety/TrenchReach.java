package spadework.safety;

import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;

/** How far the trench's top edge lies from the wall's face, at its deeper end. */
final class TrenchReach {
    private TrenchReach() {}

    static Length of(Wall wall, Bank bank) {
        return bank.reach(wall);
    }
}
