<#--
  Prints the subject of the e-mail that carries papers to the homeowner, on one line. It is given
    note  who writes to whom, about which job, with which papers (paperwork.letter.CoverNote)
-->
${note.jobTitle}, ${note.street}: papers of job ${note.number}
