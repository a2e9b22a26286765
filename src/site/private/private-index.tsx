import { PaperPage } from "./paper-page.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** The list of what was made, in the order it is needed. */
export function privateIndex({ report }: PrivateInputs, sheets: readonly PrivateSheet[]): PrivateSheet {
  return {
    path: "index.html",
    title: "Sheets to print",
    says: "What there is to print.",
    eyes: "not for publication",
    content: () => (
      <PaperPage head={`${report.club.name}, ${report.name}: not for publication`} title={`Sheets for ${report.title}`}>
        {sheets.length === 0 ? <p>There is nothing to print for {report.name}.</p> : (
          <ol>
            {sheets.map(({ path, title, says, eyes }) => <li key={path}><a href={encodeURIComponent(path)}>{title}</a>, {eyes}. {says}</li>)}
          </ol>
        )}
        <p>Keep this folder out of the site, and out of any repository that others can read, until everything is over: who reads a key can no longer taste blind.</p>
      </PaperPage>
    ),
  };
}
