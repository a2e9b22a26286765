import { Figure } from "../components/figure.js";
import { Formula } from "../components/formula.js";
import { MarginNote } from "../components/caution.js";
import { WideTable } from "../components/wide-table.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { MethodView } from "../method-view.js";
import type { SiteFile } from "../site-file.js";
import { plainNumber } from "../text/plain-number.js";
import { sentence } from "../text/printed-words.js";
import { MethodChecks } from "../components/method-checks.js";

/** The list of methods and one page for each. */
export function methodFiles(site: Site): SiteFile[] {
  const { methods } = site.inputs;
  return [
    pageFile(site, {
      path: "methods/index.html", title: "Methods",
      description: `How each number is worked out: ${methods.length} relations with formula, range, source and the values they are checked against.`,
      madeFrom: [methods], content: () => <MethodList methods={methods} />,
    }),
    ...methods.map((method) => pageFile(site, {
      path: `methods/${method.id}.html`, title: method.title, description: method.says,
      madeFrom: [method], content: () => <Method method={method} />,
    })),
  ];
}

function MethodList({ methods }: { readonly methods: readonly MethodView[] }) {
  const subjects = [...new Set(methods.map(({ subject }) => subject))];
  return (
    <>
      <header class="opening">
        <h1>Methods</h1>
        <p class="lead">How each number in this book is worked out.</p>
        <p>“Published” relations name where they were printed; “common practice” is what the trade does, without a proof; “from memory” was not looked up, and says so.</p>
      </header>
      {subjects.map((subject) => (
        <section key={subject} class="method-subject">
          <h2>{subject.charAt(0).toUpperCase() + subject.slice(1)}</h2>
          <dl>{methods.filter((method) => method.subject === subject).map((method) => <Entry key={method.id} method={method} />)}</dl>
        </section>
      ))}
    </>
  );
}

function Entry({ method }: { readonly method: MethodView }) {
  const link = useLink();
  return (
    <>
      <dt><a href={link(`methods/${method.id}.html`)}>{method.title}</a></dt>
      <dd>{method.says} <i>{method.status}</i></dd>
    </>
  );
}

function Method({ method }: { readonly method: MethodView }) {
  const link = useLink();
  const { title, subject, says, formula, range, source, status, model, inputs, output } = method;
  return (
    <article class="text">
      <header class="opening">
        <p class="overline"><a href={link("methods/index.html")}>Methods</a>, {subject}</p>
        <h1>{title}</h1>
        <p class="lead">{says}</p>
      </header>
      <MarginNote><b>Source</b> ({status}). {sentence(source)}</MarginNote>
      <p class="formula formula-large"><Formula text={formula} /></p>
      <p>It gives <var><Formula text={output.symbol} /></var>{unitWords(output.unit)}. It holds for: {sentence(range)}</p>
      {model === undefined ? null : (
        <p>
          The relation itself is worth ± {model.as === "share" ? <Figure value={100 * model.limit} unit="%" decimals={0} /> : <Figure value={model.limit} unit={output.unit} />}{" "}
          at 95 %: {sentence(model.source)}
        </p>
      )}
      {inputs.length === 0 ? null : <Inputs method={method} />}
      <MethodChecks method={method} />
    </article>
  );
}

function unitWords(unit: string): string {
  return unit === "" || unit === "SG" || unit === "count" ? "" : `, in ${unit}`;
}

function Inputs({ method: { inputs, title } }: { readonly method: MethodView }) {
  return (
    <section>
      <h2>What goes in</h2>
      <WideTable label={`Inputs of ${title}`}>
        <table>
          <thead><tr><th scope="col">Symbol</th><th scope="col">Meaning</th><th scope="col">Unit</th><th scope="col">From</th><th scope="col">To</th></tr></thead>
          <tbody>
            {inputs.map(({ symbol, meaning, unit, low, high }, index) => (
              <tr key={index}>
                <th scope="row"><var><Formula text={symbol} /></var></th>
                <td>{meaning}</td>
                <td>{unit === "" ? "–" : unit}</td>
                <td class="quantity">{plainNumber(low)}</td>
                <td class="quantity">{plainNumber(high)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
    </section>
  );
}
