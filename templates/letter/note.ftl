<#--
  Prints the words of the e-mail that carries papers to the homeowner, as plain text. It is given
    note  who writes to whom, about which job, with which papers (paperwork.letter.CoverNote)
-->
Dear ${note.names},

here are the papers for ${note.jobTitle} at ${note.street}:

<#list note.papers as paper>
- ${paper}
</#list>

The price stands until ${note.validUntil}. Take your time with them, and ask about anything that is not clear: call
<#if note.callName?has_content>${note.callName} at </#if>${note.callPhone}. Nothing begins before both of us have signed.

${note.company}
