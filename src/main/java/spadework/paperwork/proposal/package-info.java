/** The proposal. */
package spadework.paperwork.proposal;
