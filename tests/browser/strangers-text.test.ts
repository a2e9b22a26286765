/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { emptyFolder, runCommand } from "../cli/stand-in.js";
import { openBrowser } from "./browser.js";
import { EXPLORE_LOADER, FACES_FIRST } from "../../src/site/index.js";
import { pagesOf } from "./site-files.js";
import { walk } from "./walk.js";

const ATTACKS = [
  "<script>document.documentElement.dataset.ran = 'script'</script>",
  "<img src=x onerror=\"document.documentElement.dataset.ran = 'img'\">",
  "[link](javascript:document.documentElement.dataset.ran='link')",
  "[data](data:text/html,<script>1</script>)",
  "![photo](javascript:alert(1))",
  "\"><svg onload=alert(1)>",
  "{{ constructor.constructor('return process')() }} <%= process.exit(1) %> ${process.exit(1)}",
  "</title><script>document.documentElement.dataset.ran = 'title'</script>",
  "<style>body { display: none }</style>",
  "</script><script>document.documentElement.dataset.ran = 'json'</script>",
];

/** What all of them have some of, however it is written out. */
const MARKS = /dataset|alert\(1\)|process\.exit|display: none|text\/html/;

const quoted = (text: string): string => JSON.stringify(text);

const record = (number: number, attack: string): string => `---
title: ${quoted(attack)}
batch: X-${number}
brewed: 2026-03-01
brewer: ${quoted(attack)}
season: ${quoted(`season ${attack}`)}
series: ${quoted(`series ${attack}`)}
aim: {words: ${quoted(attack)}, raise: [${quoted(attack)}], primary: ${quoted(attack)}}
grist: [{malt: ${quoted(attack)}, amount: 4 kg, extract: 80 %}]
dry_hops: [{hop: ${quoted(`hop ${attack}`)}, amount: 100 g}]
yeast: {strain: ${quoted(attack)}}
fermenter: {volume: 20 L, gravity: 1.050}
---
${attack.startsWith("![") ? "A photo from elsewhere is an error, so this one has none." : attack}
`;

test("nothing a record says becomes markup or script on any page", async () => {
  const log = await emptyFolder();
  await mkdir(path.join(log, "batches"));
  for (const [index, attack] of ATTACKS.entries()) await writeFile(path.join(log, "batches", `x-${index}.md`), record(index, attack));
  const site = path.join(log, "_site");
  const built = await runCommand(["build", log, "--out", site]);
  expect(built.err).toBe("");
  expect(built.exit).toBe(0);

  // Every page that holds some of it: methods and help are the same for every log.
  const pages = pagesOf(site).filter((file) => MARKS.test(readFileSync(path.join(site, file), "utf8")));
  for (const kind of [/^index\.html$/, /^batches\/index\.html$/, /^batches\/x-\d\.html$/, /-sheet\.html$/, /^seasons\//, /^series\//]) expect(pages.some((file) => kind.test(file)), String(kind)).toBe(true);
  const browser = await openBrowser();
  const heard: string[] = [];
  const findings = await walk({ browser, files: pages, addressOf: (file) => pathToFileURL(path.join(site, file)).href }, (page) => page.evaluate((own) => ({
    ran: document.documentElement.dataset["ran"],
    visible: getComputedStyle(document.body).display,
    handlers: [...document.querySelectorAll("*")].flatMap((element) => [...element.attributes]).filter(({ name }) => name.startsWith("on")).length,
    inlineScripts: [...document.scripts].filter(({ src, type }) => src === "" && !/json/.test(type)).map(({ text }) => text).filter((text) => !own.includes(text)).length,
    links: [...document.querySelectorAll("[href]")].map((element) => element.getAttribute("href") ?? "").filter((href) => /^\s*(?:javascript|data|vbscript):/i.test(href)),
  }), [FACES_FIRST, EXPLORE_LOADER]), (page) => {
    page.on("dialog", (dialog) => { heard.push(`dialog: ${dialog.message()}`); void dialog.dismiss(); });
    page.on("request", (request) => { if (!request.url().startsWith("file:") && !request.url().startsWith("data:font")) heard.push(request.url()); });
  });
  for (const [file, found] of findings) expect(found, file).toEqual({ ran: undefined, visible: "block", handlers: 0, inlineScripts: 0, links: [] });
  expect(heard).toEqual([]);
  await browser.close();
});
