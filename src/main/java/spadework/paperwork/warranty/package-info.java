/** Certificate, reissue, maintenance card. */
package spadework.paperwork.warranty;
