package spadework.paperwork;

import java.util.List;

/**
 * Everything the homeowner's maintenance card prints, finished.
 *
 * @param number of the certificate whose duties it tells
 * @param spring the duties of spring
 * @param fall the duties of fall
 */
public record CareCard(Head head, String number, List<String> spring, List<String> fall, List<CareRow> rows) {}
