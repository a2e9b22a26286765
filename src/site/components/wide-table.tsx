import type { ComponentChildren } from "preact";

/** A table that may be wider than a phone: it scrolls inside its own region, reachable by keyboard. */
export function WideTable({ label, children }: { readonly label: string; readonly children: ComponentChildren }) {
  return <div class="scroll" role="group" tabindex={0} aria-label={label}>{children}</div>;
}
