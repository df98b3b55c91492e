<#--
  Prints the subject of the e-mail that carries papers to the homeowner, on one line. It is given
    note  who writes to whom, about which job, with which papers (paperwork.letter.CoverNote)
-->
${words("subject", note.jobTitle, note.street, note.number)}
