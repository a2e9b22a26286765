export { byPath, logFilesOf, type LogFiles, type RefusedFile } from "./log-files.js";
export { folderOf, isLeftOut, resolveInLog, type ResolvedPath } from "./log-path.js";
export { readLogFolder, whyUnreadable } from "./read-log-folder.js";
