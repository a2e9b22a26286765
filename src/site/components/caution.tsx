import type { ComponentChildren } from "preact";

/** A caution beside the number it concerns: in the margin on a wide page, in the text on a narrow one. */
export function Caution({ says }: { readonly says: string }) {
  return <div class="margin caution"><b>Caution.</b> {says}</div>;
}

/** Anything set in the margin: a source, a small table, a note. */
export function MarginNote({ children }: { readonly children: ComponentChildren }) {
  return <div class="margin">{children}</div>;
}
