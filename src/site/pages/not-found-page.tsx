import { htmlText } from "../page/html-text.js";
import { textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** A host shows this page at addresses of any depth, so it brings its style with it. */
const STYLE = `:root{color-scheme:light dark}body{margin:0;font:1.0625rem/1.55 Georgia,"Times New Roman",serif;background:Canvas;color:CanvasText}
main{max-width:34rem;margin:0 auto;padding:4rem 1.25rem}.skip{position:absolute;left:-99rem}.skip:focus{left:.5rem}h1{font-weight:400;font-size:2rem;line-height:1.2}`;

/** What a host shows for an address that isn't in the book. */
export function notFoundFiles(site: Site): SiteFile[] {
  const { name } = site.inputs.log.club;
  return [textFile(site, "404.html", [name], () => htmlText(<NotFound club={name} />))];
}

function NotFound({ club }: { readonly club: string }) {
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>No such page</title>
        <meta name="description" content="This address is not in the book." />
        <style dangerouslySetInnerHTML={{ __html: STYLE }} />
      </head>
      <body>
        <a class="skip" href="#text">Skip to the text</a>
        <main id="text" tabindex={-1}>
          <h1>No such page</h1>
          <p>This address is not in the gyle book of <bdi>{club}</bdi>. A batch that was renumbered or withdrawn leaves its old address behind.</p>
          <p>The book’s first page is <a href="index.html">index.html</a>; go up the address until it is there.</p>
        </main>
      </body>
    </html>
  );
}
