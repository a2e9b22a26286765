import type { ComponentChildren } from "preact";

export interface PaperPageProps {
  /** What stands small above the title: club, batch, who may see it. */
  readonly head: string;
  readonly title: string;
  readonly children: ComponentChildren;
}

/** What begins on a sheet of paper of its own, A4 or Letter. Text that is longer goes on on the next. */
export function PaperPage({ head, title, children }: PaperPageProps) {
  return (
    <section class="paper">
      <p class="paper-head"><bdi>{head}</bdi></p>
      <h1><bdi>{title}</bdi></h1>
      {children}
    </section>
  );
}
