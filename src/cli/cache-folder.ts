import { constants } from "node:fs";
import { access, mkdir } from "node:fs/promises";

/** A cache's folder, made where it isn't there yet; undefined where nothing can be kept, which only costs time. */
export async function usableFolder(folder: string): Promise<string | undefined> {
  try {
    await mkdir(folder, { recursive: true });
    await access(folder, constants.R_OK | constants.W_OK);
    return folder;
  } catch {
    return undefined;
  }
}
