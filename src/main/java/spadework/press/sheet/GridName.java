// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.List;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;

/**
 * A name as formulas see it.
 *
 * @param name as it is called
 * @param index among the workbook's names, from 0
 * @param definition the cells it stands for
 */
record GridName(String name, int index, List<Ptg> definition) implements EvaluationName {
    GridName {
        definition = List.copyOf(definition);
    }

    @Override
    public String getNameText() {
        return name;
    }

    @Override
    public boolean isFunctionName() {
        return false;
    }

    @Override
    public boolean hasFormula() {
        return true;
    }

    @Override
    public Ptg[] getNameDefinition() {
        return definition.toArray(Ptg[]::new);
    }

    @Override
    public boolean isRange() {
        return true;
    }

    @Override
    public NamePtg createPtg() {
        return new NamePtg(index);
    }
}
