import { mkdir, writeFile } from "node:fs/promises";
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { beforeAll, describe, expect, onTestFinished, test } from "vitest";
import { createStaticServer, fileAnswer, listen } from "../../src/cli/static-server.js";
import { emptyFolder } from "./stand-in.js";

interface Reply { readonly status: number; readonly type: string | undefined; readonly location: string | undefined; readonly body: string }

/** Sends the path as it is: fetch would tidy `..` away before the server sees it. */
function get(port: number, rawPath: string, method = "GET"): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: "127.0.0.1", port, path: rawPath, method }, (reply) => {
      let body = "";
      reply.setEncoding("utf8").on("data", (part: string) => { body += part; });
      reply.on("end", () => resolve({ status: reply.statusCode ?? 0, type: reply.headers["content-type"], location: reply.headers.location, body }));
    });
    sent.on("error", reject).end();
  });
}

async function serveFolder(): Promise<{ readonly port: number; readonly folder: string }> {
  const parent = await emptyFolder();
  const folder = path.join(parent, "site");
  await mkdir(path.join(folder, "batches"), { recursive: true });
  await writeFile(path.join(parent, "secret.txt"), "secret");
  for (const name of ["index.html", "batches/index.html", "batches/tp-03.html", "batches/tp-03.json", "a b.csv", "feed.xml"]) await writeFile(path.join(folder, name), name);
  const server = createStaticServer((pathname) => fileAnswer(folder, pathname));
  const port = await listen(server, 0);
  onTestFinished(() => void server.close());
  return { port, folder };
}

describe("a folder served over http", () => {
  test("files come with their types, folders with their index", async () => {
    const { port } = await serveFolder();
    expect(await get(port, "/")).toMatchObject({ status: 200, type: "text/html; charset=utf-8", body: "index.html" });
    expect(await get(port, "/batches/tp-03.html?x=1#y")).toMatchObject({ status: 200, body: "batches/tp-03.html" });
    expect(await get(port, "/batches/tp-03.json")).toMatchObject({ type: "application/json; charset=utf-8" });
    expect(await get(port, "/a%20b.csv")).toMatchObject({ status: 200, type: "text/csv; charset=utf-8", body: "a b.csv" });
    expect(await get(port, "/feed.xml")).toMatchObject({ type: "application/xml; charset=utf-8" });
    expect(await get(port, "/batches")).toMatchObject({ status: 301, location: "/batches/" });
    expect(await get(port, "/batches/")).toMatchObject({ status: 200, body: "batches/index.html" });
  });

  test("what isn't there is 404, with the site's own page once it has one", async () => {
    const { port, folder } = await serveFolder();
    expect(await get(port, "/none.html")).toMatchObject({ status: 404, type: "text/plain; charset=utf-8" });
    expect(await get(port, `/${"x".repeat(5000)}`)).toMatchObject({ status: 404 });
    expect(await get(port, "/index.html/deeper")).toMatchObject({ status: 404 });
    await writeFile(path.join(folder, "404.html"), "own page");
    expect(await get(port, "/batches/none.html")).toMatchObject({ status: 404, type: "text/html; charset=utf-8", body: "own page" });
  });

  test.each(["/../secret.txt", "/..%2fsecret.txt", "/%2e%2e/secret.txt", "/batches/../../secret.txt", "/..%5csecret.txt", "//secret.txt", "/%00", "/%", "/batches/%2e%2e%2f%2e%2e%2fsecret.txt"])("%s leads nowhere", async (rawPath) => {
    const { port } = await serveFolder();
    const reply = await get(port, rawPath);
    expect(reply.status).toBe(400);
    expect(reply.body).not.toContain("secret");
  });

  test("only reading is allowed; HEAD has no body", async () => {
    const { port } = await serveFolder();
    expect(await get(port, "/", "POST")).toMatchObject({ status: 405 });
    expect(await get(port, "/", "HEAD")).toMatchObject({ status: 200, body: "" });
  });
});

describe("listen", () => {
  let taken = 0;
  beforeAll(async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    taken = (other.address() as AddressInfo).port;
    return () => void other.close();
  });

  test("takes the next free port when the wanted one is taken, and only on this machine", async () => {
    const server = createStaticServer(() => Promise.resolve(undefined));
    onTestFinished(() => void server.close());
    const port = await listen(server, taken);
    expect(port).toBeGreaterThan(taken);
    expect(server.address()).toMatchObject({ address: "127.0.0.1", port });
  });
});
