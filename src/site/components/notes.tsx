import type { BatchReport, PhotoReport } from "../../report/index.js";
import { useLink } from "../page/page-context.js";
import type { PhotoView } from "../site-inputs.js";
import { renderMarkdown } from "../text/safe-markdown.js";
import { RawMarkup } from "./raw-markup.js";

export interface NotesProps {
  readonly report: BatchReport;
  readonly photos: ReadonlyMap<string, PhotoView>;
  /** Every file of the site that notes may link to. */
  readonly pages: ReadonlySet<string>;
}

/** The brewer's own words, and the photos they name; photos that the words don't name follow. */
export function Notes({ report, photos, pages }: NotesProps) {
  const link = useLink();
  const photo = (name: string): PhotoView | undefined => photos.get(besideRecord(report.file, name));
  const page = (href: string): string | undefined => {
    const path = `batches/${href.replace(/#.*$/u, "")}`;
    return /^[\w.-]+\.html(?:#[\w-]+)?$/u.test(href) && pages.has(path) ? link(path + href.slice(path.length - "batches/".length)) : undefined;
  };
  return (
    <>
      {report.notes.trim() === "" ? <p>No notes are recorded. What stands under the front matter of the record is shown here.</p> : (
        <RawMarkup class="notes" markup={renderMarkdown(report.notes, { under: 2, photo, page, link })} />
      )}
      {report.photos.filter(({ file }) => !report.notes.includes(fileName(file))).map((shown) => <Photo key={shown.file} shown={shown} view={photos.get(shown.file)} />)}
    </>
  );
}

function Photo({ shown, view }: { readonly shown: PhotoReport; readonly view: PhotoView | undefined }) {
  const link = useLink();
  if (view === undefined) return null;
  return (
    <figure class="photo">
      <img src={link(view.path)} alt={shown.alt} width={view.width} height={view.height} loading="lazy" />
      {shown.alt === "" ? null : <figcaption>{shown.alt}</figcaption>}
    </figure>
  );
}

/** Names are looked up beside the record only: "../" leads nowhere. */
function besideRecord(file: string, name: string): string {
  return [...file.split("/").slice(0, -1), name].join("/");
}

function fileName(file: string): string {
  return file.split("/").at(-1) ?? file;
}
