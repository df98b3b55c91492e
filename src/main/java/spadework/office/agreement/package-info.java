/** Issue, accept, change, close. */
package spadework.office.agreement;
