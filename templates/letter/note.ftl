<#--
  Prints the words of the e-mail that carries papers to the homeowner, as plain text. It is given
    note  who writes to whom, about which job, with which papers (paperwork.letter.CoverNote)
-->
${words("dear", note.names)}

${words("here", note.jobTitle, note.street)}

<#list note.papers as paper>
- ${paper}
</#list>

${words("until", note.validUntil)}
${words("call", note.callName?has_content?then(words("page.caller", note.callName) + " ", "") + note.callPhone)}

${note.company}
