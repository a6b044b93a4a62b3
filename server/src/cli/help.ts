export const help = `ohmwright - write, check and print test procedures for airbag and other low-resistance circuits

  ohmwright check PATHS...         findings in files and folders
      --format text|json|sarif     for people or for programs (default: text)
      --strict                     warnings fail too
  ohmwright windows FILE           what each reading step should read
      --step N                     only the step of this number or id
      --entry NAME=VALUE           the window where this was measured and entered, as in coolant=25
      --why                        how likely the values are, and what the width comes from
      --format text|json
  ohmwright card FILE -o CARD.html the printable card; refused while there are errors
      --draft                      write it all the same, marked on every page
      --date TEXT                  the date printed (default: today)
      --paper a4|a5                the size of its pages (default: a4)
  ohmwright rules [NAME]           the rules, or one of them with its examples
  ohmwright schema                 the JSON Schema of procedure files
  ohmwright serve --stdio          the language server, for any editor that speaks its protocol

  A path of - reads standard input and needs --name FILE.
  Exit status: 0 no error, 1 errors found or card refused, 2 could not run,
  or the program itself failed: then the file is not checked.

  It checks text with stated assumptions and makes no circuit safe. The maker's service information comes first.
`;
