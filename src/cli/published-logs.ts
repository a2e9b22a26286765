import { createHash } from "node:crypto";
import type { FermentationLog, Log, LogFiles } from "../records/index.js";
import type { LogReport } from "../report/index.js";

/** A fermentation log as it goes into the site's data. */
export interface PublishedLog {
  /** Of the batch it belongs to. */
  readonly slug: string;
  /** As the device wrote it, byte for byte. */
  readonly text: string;
  readonly sha256: string;
}

/** What was handed out before, by the log as read: the same bytes give the same object when a log is read again. */
const handedOut = new WeakMap<FermentationLog, PublishedLog>();

/** The fermentation logs of the published batches, and of no others. */
export function publishedLogs(log: Log, report: LogReport, files: LogFiles): PublishedLog[] {
  const published = new Set(report.batches.map(({ slug }) => slug));
  return log.batches
    .filter(({ slug }) => published.has(slug))
    .flatMap(({ slug, logs }) => logs.map((rows) => handedOutOrRead(slug, rows, files)));
}

function handedOutOrRead(slug: string, rows: FermentationLog, files: LogFiles): PublishedLog {
  const before = handedOut.get(rows);
  if (before?.slug === slug) return before;
  const fresh = asWritten(slug, Buffer.from(files.read(rows.file)));
  handedOut.set(rows, fresh);
  return fresh;
}

/** Logs are checked to be UTF-8 when they are read, so the text holds every byte, a byte-order mark included. */
function asWritten(slug: string, bytes: Buffer): PublishedLog {
  return { slug, text: bytes.toString("utf8"), sha256: createHash("sha256").update(bytes).digest("hex") };
}
