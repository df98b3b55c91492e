/** Folders, job files, pictures. */
package spadework.office.files;
