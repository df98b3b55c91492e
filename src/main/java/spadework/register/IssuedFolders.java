// SPDX-License-Identifier: Apache-2.0
package spadework.register;

/** Where issued documents lie in a job folder. */
public final class IssuedFolders {
    /** What the homeowner gets: this folder can be mailed as it is. */
    public static final String HOMEOWNER = "for-the-homeowner";
    /** What stays with the contractor: sources with wages and costs, signed papers. */
    public static final String KEPT = "kept";
    /** Where registers of before keep both. */
    public static final String FORMER = "issued";

    private IssuedFolders() {}
}
