import { problemAt, type Problem } from "../problems/index.js";
import type { RefusedFile } from "./files/index.js";

/**
 * Which files of a log are records: `batches/NAME.md`, and `index.md` in a folder of batches/.
 *
 * @param paths every file of the log, and every folder with a slash at its end
 */
export function recordFiles(paths: readonly string[], refused: readonly RefusedFile[]): { records: string[]; problems: Problem[] } {
  const shape = shapeProblem(paths, refused);
  if (shape !== undefined) return { records: [], problems: [shape] };
  const records = paths.filter((path) => /^batches\/(?:[^/]+\.md|[^/]+\/index\.md)$/u.test(path));
  const folders = paths.filter((path) => /^batches\/[^/]+\/$/u.test(path));
  const known = new Set(records);
  const problems = folders.filter((folder) => !known.has(`${folder}index.md`)).map((folder) => folderProblem(folder, paths));
  const isEmpty = records.length === 0 && problems.length === 0 && !refused.some(({ path }) => path === "." || path.startsWith("batches"));
  return { records, problems: isEmpty ? [problemAt("log/no-records", whole("batches"), {})] : problems };
}

function shapeProblem(paths: readonly string[], refused: readonly RefusedFile[]): Problem | undefined {
  if (refused.some(({ path }) => path === "." || path === "batches")) return undefined;
  if (paths.length === 0) return problemAt("log/empty", whole("."), {});
  const hasBatches = paths.some((path) => path.startsWith("batches/"));
  return hasBatches ? undefined : problemAt("log/no-batches", whole("."), {});
}

function folderProblem(folder: string, paths: readonly string[]): Problem {
  const inside = paths.filter((path) => path.startsWith(folder) && path.endsWith(".md"));
  const [first] = inside;
  const deep = inside.find((path) => path.slice(folder.length).includes("/"));
  const instead = deep !== undefined ? `Move the folder of ${deep} directly into batches/`
    : first !== undefined ? `Rename ${first.slice(folder.length)} to index.md`
      : "Put the record there as index.md, or begin the folder's name with _ if it holds none";
  return problemAt("log/folder-without-record", { ...whole(folder), found: first?.slice(folder.length) ?? "" }, { instead });
}

const whole = (file: string): { file: string; line: number; column: number; field: string; found: string } => ({ file, line: 1, column: 1, field: "", found: "" });
