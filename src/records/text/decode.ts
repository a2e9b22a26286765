import { problemAt, type Problem } from "../../problems/index.js";

/** A file's text with line breaks as \n, and what was wrong with its bytes. */
export interface Decoded {
  readonly text: string;
  readonly problems: readonly Problem[];
}

export interface DecodeLimits {
  /** In bytes. */
  readonly most: number;
  /** A byte-order mark is let pass, for files that another program wrote. */
  readonly allowMark?: boolean;
}

const MARK = "\uFEFF";

/**
 * Text of a file of a log. A file over its limit or not in UTF-8 gives empty text and its problem;
 * a byte-order mark is reported and the rest read on.
 */
export function decodeText(file: string, content: string | Uint8Array, { most, allowMark = false }: DecodeLimits): Decoded {
  const whole = { file, line: 1, column: 1, field: "", found: "" };
  if (content.length > most) {
    return { text: "", problems: [problemAt("log/too-large", { ...whole, found: inUnits(content.length) }, { limit: inUnits(most) })] };
  }
  const decoded = typeof content === "string" ? content : decodeUtf8(content);
  if (decoded === undefined || decoded.includes("\0")) return { text: "", problems: [problemAt("log/encoding", whole, {})] };
  const marked = decoded.startsWith(MARK);
  const text = (marked ? decoded.slice(1) : decoded).replaceAll(/\r\n?/gu, "\n");
  return { text, problems: marked && !allowMark ? [problemAt("log/byte-order-mark", whole, {})] : [] };
}

function decodeUtf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function inUnits(bytes: number): string {
  return bytes >= 1024 * 1024 ? `${Number((bytes / 1024 / 1024).toFixed(1))} MB` : `${Math.ceil(bytes / 1024)} KB`;
}
