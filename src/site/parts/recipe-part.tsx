import { FigureTable } from "../components/figure-table.js";
import { Notes } from "../components/notes.js";
import { RecipeTable, type RecipeLists } from "../components/recipe-table.js";
import type { RecipeReport } from "../../report/index.js";
import { PART_FIGURES } from "../views/part-figures.js";
import { rowsOf, type BatchView } from "./batch-view.js";
import { Part } from "./part.js";

/** What went in, and what the brewer wrote. */
export function RecipePart({ view }: { readonly view: BatchView }) {
  const { report, site } = view;
  const pages: ReadonlySet<string> = new Set([...site.batches.keys()].map((slug) => `batches/${slug}.html`));
  const lists = recipeLists(report.recipe);
  return (
    <Part id="recipe">
      {lists.every(([, lines]) => lines.length === 0)
        ? <p>No recipe is recorded. <code>grist</code>, <code>hops</code>, <code>yeast</code> and <code>water</code> would set it here.</p>
        : <RecipeTable lists={lists} />}
      <FigureTable rows={rowsOf(view, PART_FIGURES.brewhouse)} caption="From the recipe and the kettle" />
      <h3>Notes</h3>
      <Notes report={report} photos={site.inputs.photos} pages={pages} />
    </Part>
  );
}

function recipeLists(recipe: RecipeReport): RecipeLists {
  return [
    ["Grist", recipe.grist], ["Water", recipe.water], ["Mash", recipe.mash], ["Hops in the kettle", recipe.kettleHops],
    ["Yeast", recipe.yeast === undefined ? [] : [recipe.yeast]], ["Later additions", recipe.additions], ["Dry hops", recipe.dryHops],
  ];
}
