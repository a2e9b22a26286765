import { htmlText } from "../page/html-text.js";
import { textFile } from "../page/page-file.js";
import { siteAddress } from "../page/site-address.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** A host shows this page at addresses of any depth, so it brings its style with it. */
const STYLE = `:root{color-scheme:light dark}body{margin:0;font:1.0625rem/1.55 Georgia,"Times New Roman",serif;background:Canvas;color:CanvasText}
main{max-width:34rem;margin:0 auto;padding:4rem 1.25rem}.skip{position:absolute;left:-99rem}.skip:focus{left:.5rem}h1{font-weight:400;font-size:2rem;line-height:1.2}`;

/** What a host shows for an address that isn't in the book. */
export function notFoundFiles(site: Site): SiteFile[] {
  const { name, url } = site.inputs.log.club;
  return [textFile(site, "404.html", [name, url], () => htmlText(<NotFound club={name} url={url} />))];
}

function NotFound({ club, url }: { readonly club: string; readonly url: string | undefined }) {
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
          <WayBack url={url} />
        </main>
      </body>
    </html>
  );
}

/** Only a whole address leads home from any depth; without one the reader is told the way. */
function WayBack({ url }: { readonly url: string | undefined }) {
  if (url === undefined) return <p>The book’s first page is <a href="index.html">index.html</a>; go up the address until it is there.</p>;
  return <p>Look for it on the <a href={siteAddress(url, "index.html")}>book’s first page</a>, in the list of <a href={siteAddress(url, "batches/index.html")}>all batches</a>, or <a href={siteAddress(url, "search.html")}>search</a>.</p>;
}
