// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.List;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.job.Job;
import spadework.job.JobWarranty;
import spadework.paperwork.Dossier;

/**
 * What the work includes, rests on and asks for.
 *
 * @param included what the price includes, by what was measured
 * @param assumed what the price rests on
 * @param protection how the home is protected
 * @param preparation what the homeowner does beforehand
 */
public record WorkConditions(
        List<String> included,
        List<String> excluded,
        List<String> assumed,
        List<String> protection,
        List<String> preparation,
        List<String> terms) {

    public WorkConditions {
        included = List.copyOf(included);
        excluded = List.copyOf(excluded);
        assumed = List.copyOf(assumed);
        protection = List.copyOf(protection);
        preparation = List.copyOf(preparation);
        terms = List.copyOf(terms);
    }

    /** Those of the job, with the ones that the company has for every job. */
    public static WorkConditions of(Dossier dossier) {
        Job job = dossier.job();
        Company company = dossier.company();
        return new WorkConditions(
                PriceRows.included(dossier),
                Stream.concat(
                                dossier.terms().own(JobWarranty.said(company.excluded(), job)).stream(),
                                job.excluded().stream())
                        .distinct()
                        .toList(),
                job.assumed(),
                job.protection(),
                dossier.terms().own(company.preparation()),
                Stream.concat(dossier.terms().own(company.terms()).stream(), job.terms().stream())
                        .toList());
    }

    /** The same, and these things as well that the homeowner does beforehand. */
    public WorkConditions preparing(List<String> more) {
        return new WorkConditions(
                included,
                excluded,
                assumed,
                protection,
                Stream.concat(preparation.stream(), more.stream()).toList(),
                terms);
    }
}
