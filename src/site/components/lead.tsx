import { useWords } from "../page/use-words.js";

/** What fits the larger type of an opening; the rest of a long account goes on in the text's own. */
const LONGEST_LEAD = 420;

/** The words a page opens with. */
export function Lead({ text }: { readonly text: string }) {
  const words = useWords();
  const [lead, rest] = parted(words(text));
  return (
    <>
      <p class="lead">{lead}</p>
      {rest === "" ? null : <p>{rest}</p>}
    </>
  );
}

/** Parts a long text behind the last whole sentence that fits the lead. */
function parted(text: string): readonly [lead: string, rest: string] {
  if (text.length <= LONGEST_LEAD) return [text, ""];
  const end = text.lastIndexOf(". ", LONGEST_LEAD) + 1;
  return end === 0 ? [text, ""] : [text.slice(0, end), text.slice(end + 1)];
}
