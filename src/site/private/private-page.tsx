import { htmlText } from "../page/html-text.js";
import { PageContextProvider } from "../page/page-context.js";
import { faceStyles, styleText } from "../site-assets.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/**
 * One file, whole in itself: no link to a style, a script or another host, so that it can be carried
 * to a printer. Told to robots too, should it come to lie where they look.
 */
export function renderPrivatePage({ report }: PrivateInputs, sheet: PrivateSheet): string {
  return htmlText(
    <PageContextProvider value={{ path: sheet.path, units: report.club.units, methods: new Map() }}>
      <html lang="en">
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          <meta name="robots" content="noindex" />
          <title>{sheet.marginTitle ?? `${report.name}: ${sheet.title}`}</title>
          <style dangerouslySetInnerHTML={{ __html: style() }} />
        </head>
        <body class="private">
          <main>{sheet.content()}</main>
        </body>
      </html>
    </PageContextProvider>,
  );
}

let read: string | undefined;

function style(): string {
  read ??= `\n${faceStyles()}\n${styleText("private.css")}`;
  return read;
}
