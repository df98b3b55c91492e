package spadework.safety;

import spadework.job.Job;
import spadework.pricebook.PriceBook;

/** What the rules look at. */
public record Facts(Job job, PriceBook book) {}
