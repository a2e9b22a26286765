import type { ComponentChildren } from "preact";
import type { BatchReport, CautionReport } from "../../report/index.js";
import { useWords } from "../page/use-words.js";

/** A caution beside the number it concerns: in the margin on a wide page, in the text on a narrow one. */
export function Caution({ says }: { readonly says: string }) {
  const words = useWords();
  return <div class="margin caution"><b>Caution.</b> {words(says)}</div>;
}

/** Cautions of one part that no check of it tells. */
export function Cautions({ of, part }: { readonly of: BatchReport; readonly part: CautionReport["part"] }) {
  return <>{(of.cautions ?? []).filter((caution) => caution.part === part).map(({ id, says }) => <Caution key={id} says={says} />)}</>;
}

/** Anything set in the margin: a source, a small table, a note. */
export function MarginNote({ children }: { readonly children: ComponentChildren }) {
  return <div class="margin">{children}</div>;
}
