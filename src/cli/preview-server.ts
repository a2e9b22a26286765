import type { Preview } from "./preview.js";
import { ReloadChannel, previewPage, waitingPage } from "./reload-channel.js";
import { createStaticServer, fileAnswer, listen } from "./static-server.js";

export interface PreviewServer {
  readonly port: number;
  /** Has every open page load again. */
  readonly reload: () => void;
  readonly close: () => Promise<void>;
}

/**
 * Serves a preview on this machine only.
 *
 * @param port first port to try; 0 for any free one
 */
export async function servePreview(preview: Preview, port: number): Promise<PreviewServer> {
  const channel = new ReloadChannel();
  const server = createStaticServer(async (pathname, response) => {
    const own = channel.answer(pathname, response);
    if (own !== undefined) return own === "kept open" ? undefined : own;
    // Before the file is read: a page read meanwhile belongs to the edition before.
    const { edition } = channel;
    if (!preview.isBuilt) return waitingPage(edition, preview.problems);
    return previewPage(await fileAnswer(preview.folder, pathname), edition, preview.problems);
  });
  const taken = await listen(server, port);
  return {
    port: taken,
    reload: () => channel.reload(),
    close: () => new Promise((resolve) => {
      channel.close();
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}
