/** The scope of work. */
package spadework.paperwork.scope;
