import type { ServerResponse } from "node:http";
import { type Problem, formatProblems } from "../problems/index.js";
import type { Answer } from "./static-server.js";

/** Addresses that only the preview server has; no file of a site begins like this. */
const EVENTS = /^\/_preview\/events-(\d+)$/;
const SCRIPT = /^\/_preview\/reload-(\d+)\.js$/;

const reloadScript = (edition: number): string =>
  `new EventSource("/_preview/events-${edition}").addEventListener("reload", () => location.reload());\n`;

const RELOAD = "event: reload\ndata: now\n\n";

/** Tells open pages to load again, and puts what they need for that into pages as they are served. Built files never hold any of it. */
export class ReloadChannel {
  readonly #open = new Set<ServerResponse>();
  #edition = 0;

  /** Counts what was shown so far. A page carries the edition it was read from, so that a save between its reading and its first question isn't missed. */
  get edition(): number {
    return this.#edition;
  }

  /** An answer to the channel's own addresses; undefined for all others. An open page's response is kept, to be written to later. */
  answer(pathname: string, response: ServerResponse): Answer | "kept open" | undefined {
    const [, scriptOf] = SCRIPT.exec(pathname) ?? [];
    if (scriptOf !== undefined) return { status: 200, type: "text/javascript; charset=utf-8", body: reloadScript(Number(scriptOf)) };
    const [, edition] = EVENTS.exec(pathname) ?? [];
    if (edition === undefined) return undefined;
    response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
    // The browser asks again by itself after this many milliseconds when the server was stopped and started.
    response.write("retry: 500\n\n");
    // Another edition is also one of a server that was stopped and started.
    if (Number(edition) !== this.#edition) response.write(RELOAD);
    this.#open.add(response);
    response.on("close", () => this.#open.delete(response));
    return "kept open";
  }

  reload(): void {
    this.#edition += 1;
    for (const response of this.#open) response.write(RELOAD);
  }

  close(): void {
    for (const response of this.#open) response.end();
  }
}

/** A page as the preview shows it: reloads when there is another edition than the one it was read from, and says on top what is wrong with the log. */
export function previewPage(answer: Answer, edition: number, problems: readonly Problem[]): Answer {
  if (!answer.type.startsWith("text/html")) return answer;
  const html = Buffer.from(answer.body).toString("utf8");
  const withScript = insertBefore(html, "</body>", `<script src="/_preview/reload-${edition}.js" defer></script>`);
  return { ...answer, body: problems.length === 0 ? withScript : insertAfterBodyTag(withScript, banner(problems, "The log has errors: this is the last good site.")) };
}

/** What is shown while there is no site yet: what is wrong, or that it is being built. */
export function waitingPage(edition: number, problems: readonly Problem[]): Answer {
  const content = problems.length === 0 ? "<p>The site is being built …</p>" : banner(problems, "The log has errors, so there is no site yet.");
  const page = `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>Not built yet</title></head><body>${content}</body></html>\n`;
  return previewPage({ status: 503, type: "text/html; charset=utf-8", body: page }, edition, []);
}

const BANNER_STYLE = "margin:0;padding:1rem 1.25rem;max-height:60vh;overflow:auto;background:#7a1f12;color:#fff;font:15px/1.45 ui-monospace,monospace;position:relative;z-index:9";

function banner(problems: readonly Problem[], heading: string): string {
  return `<div role="alert" style="${BANNER_STYLE}"><strong>${heading}</strong>`
    + `<pre style="white-space:pre-wrap;margin:.75rem 0 0;color:inherit;background:none">${escapeText(formatProblems(problems, "text"))}</pre></div>`;
}

const escapeText = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

function insertBefore(html: string, mark: string, addition: string): string {
  const at = html.lastIndexOf(mark);
  return at < 0 ? html + addition : html.slice(0, at) + addition + html.slice(at);
}

function insertAfterBodyTag(html: string, addition: string): string {
  const [tag = ""] = /<body[^>]*>/.exec(html) ?? [];
  const at = html.indexOf(tag) + tag.length;
  return tag === "" ? addition + html : html.slice(0, at) + addition + html.slice(at);
}
