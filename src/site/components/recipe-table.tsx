import type { RecipeLine } from "../../report/index.js";
import { Figure } from "./figure.js";
import { useWords } from "../page/use-words.js";

/** Lists of a recipe with their headings: "Grist", "Hops in the kettle". */
export type RecipeLists = readonly (readonly [title: string, lines: readonly RecipeLine[]])[];

/** The whole recipe in one table, list after list, amounts first, as a cook writes them. */
export function RecipeTable({ lists }: { readonly lists: RecipeLists }) {
  return (
    <table class="recipe">
      <caption>Recipe</caption>
      <thead>
        <tr><th scope="col">Amount</th><th scope="col">What</th><th scope="col">Share</th></tr>
      </thead>
      {lists.filter(([, lines]) => lines.length > 0).map(([title, lines]) => (
        <tbody key={title}>
          <tr><th scope="rowgroup" colspan={3}>{title}</th></tr>
          {lines.map((line, index) => <Line key={index} line={line} />)}
        </tbody>
      ))}
    </table>
  );
}

function Line({ line }: { readonly line: RecipeLine }) {
  const words = useWords();
  return (
    <tr>
      <td><bdi>{line.amount === "" ? "–" : words(line.amount)}</bdi></td>
      <th scope="row"><bdi>{line.what}</bdi>{line.detail === "" ? null : <span class="detail">, <bdi>{words(line.detail)}</bdi></span>}</th>
      <td>{line.share === undefined ? null : <Figure value={line.share} unit="%" />}</td>
    </tr>
  );
}
