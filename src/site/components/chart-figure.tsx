import type { Chart } from "../../charts/index.js";
import { useLink } from "../page/page-context.js";
import { RawMarkup } from "./raw-markup.js";
import { WideTable } from "./wide-table.js";

export interface ChartFigureProps {
  readonly chart: Chart;
  /** Undefined where the picture could not be drawn: its words and numbers stand alone. */
  readonly markup: string | undefined;
  /** Path in the site of the numbers as CSV. */
  readonly csv: string;
}

/** A picture, what it says in words, and the numbers it was drawn from. */
export function ChartFigure({ chart, markup, csv }: ChartFigureProps) {
  return (
    <figure class="chart-figure" id={`chart-${chart.id}`}>
      {markup === undefined ? null : <RawMarkup class="picture" markup={markup} />}
      <figcaption>
        <p><b>{chart.title}.</b> {chart.description}</p>
        <ChartNumbers chart={chart} csv={csv} />
      </figcaption>
    </figure>
  );
}


function ChartNumbers({ chart, csv }: Pick<ChartFigureProps, "chart" | "csv">) {
  const link = useLink();
  const { columns, rows } = chart.table;
  return (
    <details>
      <summary>The numbers</summary>
      <WideTable label={`The numbers of ${chart.title}`}>
        <table class="numbers">
          <thead>
            <tr>{columns.map(({ title, unit }) => <th key={title} scope="col">{unit === undefined ? title : `${title}, ${unit}`}</th>)}</tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <tr key={index}>{row.map((cell, column) => <td key={column}>{cell === "" ? "–" : cell}</td>)}</tr>
            ))}
          </tbody>
        </table>
      </WideTable>
      <p><a href={link(csv)}>The same as CSV</a></p>
    </details>
  );
}
