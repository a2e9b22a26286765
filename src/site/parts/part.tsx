import type { ComponentChildren } from "preact";
import { BATCH_PARTS, type BatchPartId } from "../views/batch-parts.js";

/** One numbered part of a batch page. */
export function Part({ id, children }: { readonly id: BatchPartId; readonly children: ComponentChildren }) {
  const index = BATCH_PARTS.findIndex((part) => part.id === id);
  return (
    <section class="part" id={id}>
      <h2><span class="numeral">{index + 1}</span> {BATCH_PARTS[index]?.title}</h2>
      {children}
    </section>
  );
}

/** The parts in one line, as old books head a chapter. */
export function Synopsis() {
  return (
    <nav class="synopsis" aria-label="On this page">
      <ol>
        {BATCH_PARTS.map(({ id, title }) => <li key={id}><a href={`#${id}`}>{title}</a></li>)}
      </ol>
    </nav>
  );
}
