// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.nio.file.Path;
import spadework.company.Company;
import spadework.intake.law.StateRuleBook;
import spadework.job.Job;
import spadework.pricebook.PriceBook;

/**
 * A job with the company and the price book that go with it, free of faults.
 *
 * @param states the rules of the states, with what a file beside the job changes
 * @param jobFolder the folder of the job file, in which its photos lie
 */
public record ReadJob(Job job, Company company, PriceBook book, StateRuleBook states, Path jobFolder)
        implements Reading {}
