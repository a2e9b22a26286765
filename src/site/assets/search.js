// The search page: looks through search-data.js with the MiniSearch library, both loaded beside this script.
// What is asked stands in the address, so that a search can be kept and sent.
(function () {
  "use strict";
  document.documentElement.classList.add("scripted");

  const FIELDS = { batch: "batch", title: "title", style: "style", brewer: "brewer", season: "season", series: "series", hops: "hops", recipe: "recipe", summary: "in short", tasters: "aim and tasters", notes: "notes" };
  const MOST_SHOWN = 100;
  const WORD = /[\p{L}\p{N}]+/gu;
  const fold = (word) => word.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  const element = (name, text, className) => {
    const made = document.createElement(name);
    if (text !== undefined) made.textContent = text;
    if (className !== undefined) made.className = className;
    return made;
  };

  document.addEventListener("DOMContentLoaded", function () {
    const data = window.gylebookSearch;
    const byId = (id) => document.getElementById(id);
    const words = byId("search-words"), count = byId("search-count"), found = byId("search-found");
    const figure = byId("search-figure"), from = byId("search-from"), to = byId("search-to");
    const choices = Array.from(document.querySelectorAll("[data-field]"));
    if (data === undefined || window.MiniSearch === undefined) {
      count.textContent = "What the search looks through didn’t load.";
      return;
    }
    const options = { processTerm: (term) => fold(term) || null, tokenize: (text) => text.match(WORD) || [] };
    const batches = new window.MiniSearch({ ...options, fields: Object.keys(FIELDS) });
    batches.addAll(data.batches);
    const pages = new window.MiniSearch({ ...options, idField: "path", fields: ["title", "description"] });
    pages.addAll(data.pages);
    const batchOf = new Map(data.batches.map((batch) => [batch.id, batch]));
    const pageOf = new Map(data.pages.map((page) => [page.path, page]));
    const how = {
      combineWith: "AND", prefix: (term) => term.length > 1, fuzzy: (term) => (term.length > 4 ? 1 : false),
      boost: { batch: 6, title: 4, hops: 3, style: 2, series: 2 },
    };

    // Commas are decimal signs to half the world.
    const numberOf = (input) => {
      const text = input === null ? "" : input.value.trim().replace(",", ".").replace("−", "-");
      return text === "" || !Number.isFinite(Number(text)) ? undefined : Number(text);
    };

    function asked() {
      return {
        words: words.value.trim(),
        chosen: choices.filter((choice) => choice.value !== "").map((choice) => ({ field: choice.dataset.field, title: choice.labels[0].textContent, value: choice.value })),
        figure: figure === null ? "" : figure.value, from: numberOf(from), to: numberOf(to),
      };
    }

    const inList = (list, value) => (", " + list + ", ").includes(", " + value + ", ");
    const fits = (batch, { chosen, figure: id, from: low, to: high }) =>
      chosen.every(({ field, value }) => (field === "hop" ? inList(batch.hops, value) : batch[field] === value)) &&
      (id === "" || (batch.figures[id] !== undefined && (low === undefined || batch.figures[id][0] >= low) && (high === undefined || batch.figures[id][0] <= high)));

    // The words around the first place where a term stands in a text.
    function quoted(text, term) {
      for (const match of text.matchAll(WORD)) {
        if (fold(match[0]) !== term) continue;
        const start = Math.max(0, match.index - 50), end = Math.min(text.length, match.index + match[0].length + 70);
        const first = start === 0 ? 0 : text.indexOf(" ", start) + 1;
        const last = end === text.length ? end : text.lastIndexOf(" ", end);
        return { before: (first > 0 ? "…" : "") + text.slice(first, match.index), word: match[0], after: text.slice(match.index + match[0].length, Math.max(last, match.index + match[0].length)) + (last < text.length ? "…" : "") };
      }
      return undefined;
    }

    // Why a batch is here: for each term the first of its fields, in the words of the record.
    function reasons(batch, hit, query) {
      const list = element("ul", undefined, "reasons");
      for (const [term, fields] of Object.entries(hit === undefined ? {} : hit.match)) {
        const field = Object.keys(FIELDS).find((name) => fields.includes(name) && name !== "title" && name !== "batch") || fields[0];
        const quote = quoted(batch[field] || "", term);
        if (quote === undefined || field === "title" || field === "batch") continue;
        const line = element("li", FIELDS[field] + ": ");
        const words = element("bdi");
        words.append(quote.before, element("mark", quote.word), quote.after);
        line.append(words);
        list.append(line);
      }
      for (const { title, value } of query.chosen) list.append(element("li", title.toLowerCase() + ": " + value));
      if (query.figure !== "") {
        const { title } = data.figures.find(({ id }) => id === query.figure);
        list.append(element("li", title + ": " + batch.figures[query.figure][1] + ", " + batch.figures[query.figure][2]));
      }
      return list;
    }

    function batchEntry({ batch, hit }, query) {
      const entry = element("li");
      const head = element("p", undefined, "entry-title");
      const anchor = element("a");
      anchor.href = "batches/" + encodeURIComponent(batch.id) + ".html";
      anchor.append(element("bdi", batch.batch), " ", element("bdi", batch.title));
      head.append(anchor);
      entry.append(head, element("p", [batch.style, "brewed " + batch.brewed + (batch.brewer === undefined ? "" : " by " + batch.brewer), batch.status].filter(Boolean).join(", "), "overline"), reasons(batch, hit, query));
      return entry;
    }

    function pageEntry(page) {
      const entry = element("li");
      const head = element("p", undefined, "entry-title");
      const anchor = element("a", page.title);
      anchor.href = page.path.split("/").map(encodeURIComponent).join("/");
      head.append(anchor);
      entry.append(head, element("p", page.description));
      return entry;
    }

    function matching(query) {
      const hits = query.words === "" ? undefined : batches.search(query.words, how);
      const candidates = hits === undefined ? data.batches.map((batch) => ({ batch })) : hits.map((hit) => ({ batch: batchOf.get(hit.id), hit }));
      const narrowed = query.chosen.length > 0 || query.figure !== "";
      if (query.words === "" && !narrowed) return undefined;
      const others = query.words === "" || narrowed ? [] : pages.search(query.words, how).map(({ id }) => pageOf.get(id));
      return { batches: candidates.filter(({ batch }) => fits(batch, query)), pages: others };
    }

    const several = (number, one, many) => (number === 0 ? "no " + one : number === 1 ? "1 " + one : number + " " + many);

    function show() {
      const query = asked();
      const result = matching(query);
      keep(query);
      if (result === undefined) {
        count.textContent = data.batches.length + " batches to look through.";
        found.replaceChildren();
        return;
      }
      // A page whose title has all the words is what was meant more often than a batch that has them somewhere.
      const wanted = (query.words.match(WORD) || []).map(fold);
      const isNamed = ({ title }) => wanted.every((word) => (title.match(WORD) || []).map(fold).includes(word));
      const entries = [...result.pages.filter(isNamed).map(pageEntry), ...result.batches.map((one) => batchEntry(one, query)), ...result.pages.filter((page) => !isNamed(page)).map(pageEntry)];
      const said = "Found: " + several(result.batches.length, "batch", "batches") + (result.pages.length === 0 ? "" : " and " + several(result.pages.length, "other page", "other pages")) + ".";
      count.textContent = said + (entries.length > MOST_SHOWN ? " The first " + MOST_SHOWN + " are shown." : "");
      found.replaceChildren(...entries.slice(0, MOST_SHOWN));
    }

    function keep(query) {
      const parts = new URLSearchParams();
      if (query.words !== "") parts.set("q", query.words);
      for (const { field, value } of query.chosen) parts.set(field, value);
      if (query.figure !== "") parts.set("figure", query.figure);
      if (query.figure !== "" && query.from !== undefined) parts.set("from", query.from);
      if (query.figure !== "" && query.to !== undefined) parts.set("to", query.to);
      const hash = parts.size === 0 ? "" : "#" + parts;
      if (location.hash !== hash) history.replaceState(null, "", hash === "" ? location.pathname : hash);
    }

    function restore() {
      const parts = new URLSearchParams(location.hash.slice(1));
      words.value = parts.get("q") || "";
      for (const choice of choices) choice.value = parts.get(choice.dataset.field) || "";
      for (const choice of choices) if (choice.selectedIndex < 0) choice.value = "";
      if (figure === null) return;
      figure.value = parts.get("figure") || "";
      if (figure.selectedIndex < 0) figure.value = "";
      from.value = parts.get("from") || "";
      to.value = parts.get("to") || "";
    }

    // Down from the words into what is found, and on; up the same way back.
    function walk(event) {
      if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
      if (event.target !== words && !found.contains(event.target)) return;
      const links = Array.from(found.querySelectorAll(".entry-title a"));
      const next = links.indexOf(document.activeElement) + (event.key === "ArrowDown" ? 1 : -1);
      const goal = next < 0 ? words : links[next];
      if (goal === undefined || links.length === 0) return;
      event.preventDefault();
      goal.focus();
    }

    restore();
    show();
    document.addEventListener("keydown", walk);
    for (const input of [words, from, to]) if (input !== null) input.addEventListener("input", show);
    for (const choice of [...choices, figure]) if (choice !== null) choice.addEventListener("change", show);
    // The skip link writes the address too.
    window.addEventListener("hashchange", () => { if (location.hash !== "#text") { restore(); show(); } });
    words.focus({ preventScroll: true });
  });
})();
