import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { ProblemView, RecordFieldView } from "../help-views.js";
import type { SiteFile } from "../site-file.js";
import { useLink } from "../page/page-context.js";

/** What a record may say and every problem it may have: both generated from the code that reads it. */
export function helpFiles(site: Site): SiteFile[] {
  const { recordFields, problemCatalogue } = site.inputs;
  return [
    pageFile(site, {
      path: "help/record.html", title: "How to write a record",
      description: "Every field of a batch record and of the club’s own files: meaning, unit, range and an example.",
      madeFrom: [recordFields], content: () => <RecordHelp fields={recordFields} />,
    }),
    pageFile(site, {
      path: "help/problems.html", title: "Problems and what to write instead",
      description: "Every problem that checking a record can find, by its permanent code, and what to write instead.",
      madeFrom: [problemCatalogue], content: () => <ProblemHelp problems={problemCatalogue} />,
    }),
  ];
}

function RecordHelp({ fields }: { readonly fields: readonly RecordFieldView[] }) {
  const link = useLink();
  const files = [...new Set(fields.map(({ file }) => file ?? "batch"))];
  return (
    <>
      <header class="opening">
        <h1>How to write a record</h1>
        <p class="lead">Write what you measured, in the unit you measured it; never write what can be computed. One record is one Markdown file.</p>
        <p>The fields stand between two lines of <code>---</code> at the top of the file; below them are your notes. Only those marked required must be there. A field that is missing means not recorded; an empty list means there was none. <a href={link("help/problems.html")}>Problems and what to write instead</a>.</p>
      </header>
      {files.map((file) => (
        <section key={file}>
          <h2>{file === "batch" ? "A batch" : <code>{file}</code>}</h2>
          <dl class="fields">{fields.filter((field) => (field.file ?? "batch") === file).map((field) => <Field key={field.path} field={field} />)}</dl>
        </section>
      ))}
    </>
  );
}

function Field({ field }: { readonly field: RecordFieldView }) {
  const facts = [
    field.unit === undefined ? undefined : `unit: ${field.unit}`,
    field.range === undefined ? undefined : `range: ${field.range}`,
    field.default === undefined ? undefined : `when left out: ${field.default}`,
  ].filter((fact) => fact !== undefined);
  return (
    <>
      <dt><code>{field.path}</code>{field.required === true ? <b> required</b> : null}</dt>
      <dd>
        {field.meaning}
        {facts.length === 0 ? null : <span class="row-note">{facts.join("; ")}</span>}
        {field.example === undefined ? null : <span class="row-note">for example <code>{field.example}</code></span>}
      </dd>
    </>
  );
}

function ProblemHelp({ problems }: { readonly problems: readonly ProblemView[] }) {
  return (
    <>
      <header class="opening">
        <h1>Problems and what to write instead</h1>
        <p class="lead">Checking a log finds all of these in one run, each with its file, line and column. An error stops the build; a warning is only told.</p>
      </header>
      <section>
        <dl class="problems">
        {problems.map((problem) => (
          <ProblemEntry key={problem.code} problem={problem} />
        ))}
        </dl>
      </section>
    </>
  );
}

function ProblemEntry({ problem: { code, severity, title, explanation } }: { readonly problem: ProblemView }) {
  return (
    <>
      <dt id={code.replaceAll(/[^a-z0-9]+/giu, "-")}>{title} <code>{code}</code> <i>{severity}</i></dt>
      <dd>{explanation}</dd>
    </>
  );
}
