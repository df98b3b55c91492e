// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import spadework.paperwork.PaperWords;

/** What was agreed beside what was built, as one table that gives the reason of each difference. */
final class Comparison {
    private final PaperWords terms;
    private final List<ComparedRow> rows = new ArrayList<>();

    Comparison(PaperWords terms) {
        this.terms = terms;
    }

    /** @param planned the gallons that a wall's coating was planned with, by its label; empty for other finishes */
    List<ComparedRow> of(
            List<BuiltWallRow> walls,
            List<BuiltPipeRow> pipes,
            List<BuiltWork.Ground> ground,
            UnaryOperator<String> planned) {
        walls.forEach(wall -> wall(wall, planned.apply(wall.label())));
        pipes.forEach(this::pipe);
        ground.forEach(row -> add(terms.get("compared.ground"), row.what(), row.agreed(), row.built(), "ground"));
        return List.copyOf(rows);
    }

    private void wall(BuiltWallRow wall, String gallons) {
        String where = terms.get("compared.wall", "label", wall.label());
        add(
                where,
                terms.get("compared.length"),
                wall.length().agreed(),
                wall.length().built(),
                "length");
        add(
                where,
                terms.get("compared.depth"),
                wall.depth().agreed(),
                wall.depth().built(),
                "depth");
        if (gallons.isEmpty()) {
            return;
        }
        add(where, terms.get("compared.gallons"), gallons, wall.coat().gallons(), "gallons");
        add(
                where,
                terms.get("compared.film"),
                wall.film().wetPromised(),
                wall.film().mean(),
                "film");
        add(
                where,
                terms.get("compared.dry"),
                wall.film().dryPromised(),
                wall.film().dry(),
                "dry");
    }

    private void pipe(BuiltPipeRow pipe) {
        String where = terms.get("compared." + PaperWords.key(pipe.kind()), "label", pipe.label());
        add(where, terms.get("compared.length"), pipe.lengthAgreed(), pipe.lengthBuilt(), "pipe");
        add(
                where,
                terms.get("compared.levels"),
                pipe.levelsAgreed().isEmpty() ? terms.get("compared.on-site") : pipe.levelsAgreed(),
                pipe.levelsBuilt(),
                "levels");
    }

    private void add(String where, String what, String agreed, String built, String reason) {
        boolean differs = !built.isEmpty() && !built.equals(agreed);
        rows.add(new ComparedRow(where, what, agreed, built, differs ? terms.get("compared.why." + reason) : ""));
    }
}
