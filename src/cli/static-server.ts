import { type IncomingMessage, type Server, type ServerResponse, createServer } from "node:http";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { fileErrorCode } from "./expected-failure.js";

const CONTENT_TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8", ".csv": "text/csv; charset=utf-8", ".txt": "text/plain; charset=utf-8",
  ".xml": "application/xml; charset=utf-8", ".ics": "text/calendar; charset=utf-8", ".svg": "image/svg+xml; charset=utf-8",
  ".jpg": "image/jpeg", ".png": "image/png", ".webp": "image/webp", ".ico": "image/x-icon",
  ".woff2": "font/woff2", ".pdf": "application/pdf",
};

export interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: Uint8Array | string;
  readonly location?: string;
}

/** Gives an answer to a path of the address, or takes the response over (then: undefined). */
export type Responder = (pathname: string, response: ServerResponse) => Promise<Answer | undefined>;

/** Answers GET and HEAD with what `respond` gives; never caches, since files change under it. */
export function createStaticServer(respond: Responder): Server {
  return createServer((request, response) => {
    answer(request, response, respond).catch(() => response.headersSent ? response.destroy() : send(request, response, plain(500, "The server made a mistake")));
  });
}

async function answer(request: IncomingMessage, response: ServerResponse, respond: Responder): Promise<void> {
  if (request.method !== "GET" && request.method !== "HEAD") {
    send(request, response, plain(405, "Only GET and HEAD"));
    return;
  }
  const given = await respond(pathnameOf(request.url ?? "/"), response);
  if (given !== undefined) send(request, response, given);
}

const pathnameOf = (address: string): string => address.replace(/[?#].*$/s, "");

function send(request: IncomingMessage, response: ServerResponse, { status, type, body, location }: Answer): void {
  const bytes = Buffer.from(body);
  response.writeHead(status, {
    "content-type": type, "content-length": bytes.length, "cache-control": "no-store",
    "x-content-type-options": "nosniff", ...(location === undefined ? {} : { location }),
  });
  response.end(request.method === "HEAD" ? undefined : bytes);
}

/** A short answer in plain text. */
export function plain(status: number, body: string): Answer {
  return { status, type: "text/plain; charset=utf-8", body: `${body}\n` };
}

/**
 * A file of `folder` for a path of the address: `/` and folders give their index.html, what isn't there the site's own 404.html.
 * Nothing outside the folder is ever read.
 */
export async function fileAnswer(folder: string, pathname: string): Promise<Answer> {
  const file = fileFor(folder, pathname);
  if (file === undefined) return plain(400, "Not an address of this site");
  const found = await readIfThere(file);
  if (found === "folder") return { ...plain(301, "Moved"), location: `${pathname}/` };
  if (found !== undefined) return { status: 200, type: contentType(file), body: found };
  const own = await readIfThere(path.join(folder, "404.html"));
  return own instanceof Uint8Array ? { status: 404, type: contentType("404.html"), body: own } : plain(404, "Not found");
}

const contentType = (file: string): string => CONTENT_TYPES[path.extname(file).toLowerCase()] ?? "application/octet-stream";

/** The file an address stands for, or undefined when it isn't one: bad escapes, a way out of the folder. */
function fileFor(folder: string, pathname: string): string | undefined {
  let decoded: string;
  try {
    decoded = decodeURIComponent(pathname);
  } catch {
    return undefined;
  }
  if (!decoded.startsWith("/") || /[\0\\]/.test(decoded)) return undefined;
  const names = decoded.slice(1).split("/");
  if (names.some((name, index) => name === ".." || name === "." || (name === "" && index < names.length - 1))) return undefined;
  return path.join(folder, ...names, ...(names.at(-1) === "" ? ["index.html"] : []));
}

async function readIfThere(file: string): Promise<Uint8Array | "folder" | undefined> {
  try {
    return await readFile(file);
  } catch (error) {
    const code = fileErrorCode(error);
    if (code === "EISDIR") return "folder";
    if (code === "ENOENT" || code === "ENOTDIR" || code === "ENAMETOOLONG") return undefined;
    throw error;
  }
}

/**
 * Listens on this machine only, on `port` or the next free one.
 *
 * @returns the port it listens on
 */
export async function listen(server: Server, port: number): Promise<number> {
  for (let candidate = port; candidate <= 65535; candidate += 1) {
    const taken = await tryPort(server, candidate);
    if (taken !== undefined) return taken;
  }
  throw new Error(`no free port from ${port} on`);
}

function tryPort(server: Server, port: number): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const refused = (error: Error): void => fileErrorCode(error) === "EADDRINUSE" ? resolve(undefined) : reject(error);
    server.once("error", refused);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", refused);
      const address = server.address();
      resolve(typeof address === "object" && address !== null ? address.port : port);
    });
  });
}
