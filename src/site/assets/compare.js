// Two to four batches side by side, as the address names them: compare.html#tp-02,tp-03.
// What is known of a batch is loaded as a script when it is asked for, so that this works from disk too.
(function () {
  "use strict";
  document.documentElement.classList.add("scripted");

  const MOST = 4;
  const PARTS = { recipe: "Recipe", process: "Process", result: "Result" };
  const element = (name, text, className) => {
    const made = document.createElement(name);
    if (text !== undefined) made.textContent = text;
    if (className !== undefined) made.className = className;
    return made;
  };

  function load(slug) {
    const known = () => (window.gylebookCompared || {})[slug];
    if (known() !== undefined) return Promise.resolve(known());
    return new Promise(function (resolve) {
      const script = element("script");
      script.src = "batches/" + encodeURIComponent(slug) + "-compare.js";
      script.addEventListener("load", () => resolve(known()));
      script.addEventListener("error", () => resolve(undefined));
      document.head.append(script);
    });
  }

  // Whether two cells are the same: as the pages of batches hold one against the batch it repeats.
  function differ(one, other) {
    if (one.key !== undefined) return one.key === other.key ? "same" : "changed";
    if (one.value === other.value) return "same";
    const together = Math.hypot(one.plusMinus || 0, other.plusMinus || 0);
    if (together > 0) return Math.abs(one.value - other.value) > together ? "changed" : "within";
    return one.text === other.text ? "same" : "changed";
  }

  function judge(cells) {
    const known = cells.filter((cell) => cell !== undefined);
    const pairs = known.flatMap((one, index) => known.slice(index + 1).map((other) => differ(one, other)));
    if (pairs.includes("changed")) return "changed";
    if (known.length < cells.length) return "unknown";
    return pairs.includes("within") ? "within" : "same";
  }

  // Rows in the order of the batches' own cells; one that only some batches have stays where it first stands.
  function rowsOf(batches, wanted) {
    const rows = new Map();
    for (const part of wanted) {
      for (const batch of batches) {
        for (const cell of batch.cells) {
          const name = part + "\n" + cell.what;
          if (cell.part === part && !rows.has(name)) {
            rows.set(name, { part, what: cell.what, cells: batches.map((one) => one.cells.find((other) => other.part === part && other.what === cell.what)) });
          }
        }
      }
    }
    return Array.from(rows.values());
  }

  function head(batches) {
    const row = element("tr");
    for (const text of ["What", ...batches.map(({ batch }) => batch)]) {
      const cell = element("th");
      cell.scope = "col";
      cell.append(element("bdi", text));
      row.append(cell);
    }
    const made = element("thead");
    made.append(row);
    return made;
  }

  // Which batches these are, with the way to each and the way to leave it out.
  function entry({ slug, batch, title, about }, drop) {
    const made = element("li");
    const anchor = element("a");
    anchor.href = "batches/" + encodeURIComponent(slug) + ".html";
    anchor.append(element("b", batch), " ", element("bdi", title));
    const button = element("button", "leave out", "sort screen-only");
    button.type = "button";
    button.setAttribute("aria-label", "Leave out " + batch);
    button.addEventListener("click", () => drop(slug));
    made.append(anchor, " ", element("span", about, "row-note"), " ", button);
    return made;
  }

  function bodyRow(row, batches) {
    const made = element("tr");
    const what = element("th", row.what);
    what.scope = "row";
    made.append(what);
    row.cells.forEach(function (cell, index) {
      const place = element("td", undefined, cell === undefined ? "not-measured" : undefined);
      place.dataset.head = batches[index].batch;
      // Each ingredient on a line of its own.
      const lines = cell === undefined ? ["not recorded"] : cell.part === "recipe" ? cell.text.split("; ") : [cell.text];
      place.append(...lines.map((line) => element("bdi", line, lines.length > 1 ? "row-line" : undefined)));
      if (cell !== undefined && cell.basis !== undefined) place.append(element("span", " " + cell.basis, "basis"));
      made.append(place);
    });
    return made;
  }

  function table(caption, rows, batches) {
    const made = element("table", undefined, "comparison side-by-side stack");
    made.append(element("caption", caption), head(batches));
    const groups = new Map();
    for (const row of rows) groups.set(row.part, [...(groups.get(row.part) || []), row]);
    for (const [part, members] of groups) {
      const body = element("tbody");
      if (PARTS[part] !== undefined) {
        const title = element("tr");
        const cell = element("th", PARTS[part]);
        cell.scope = "rowgroup";
        cell.colSpan = batches.length + 1;
        title.append(cell);
        body.append(title);
      }
      body.append(...members.map((row) => bodyRow(row, batches)));
      made.append(body);
    }
    return made;
  }

  document.addEventListener("DOMContentLoaded", function () {
    const add = document.getElementById("compare-batch"), says = document.getElementById("compare-says"), place = document.getElementById("compare-table"), who = document.getElementById("compare-who");
    const options = new Map(Array.from(add.options).filter(({ value }) => value !== "").map((option) => [option.value, option]));
    // A slug holds letters, digits and hyphens only, so nothing in it needs decoding but the comma.
    const asked = () => location.hash.slice(1).replaceAll("%2C", ",").split(",").map((slug) => slug.trim().toLowerCase()).filter(Boolean);
    let turn = 0;

    async function show() {
      const mine = (turn += 1);
      const named = [...new Set(asked())];
      const slugs = named.filter((slug) => options.has(slug)).slice(0, MOST);
      for (const [slug, option] of options) option.disabled = slugs.includes(slug);
      add.disabled = slugs.length === MOST;
      const unknown = named.filter((slug) => !options.has(slug));
      const loaded = await Promise.all(slugs.map(load));
      if (mine !== turn) return;
      const batches = loaded.filter((batch) => batch !== undefined);
      const notes = unknown.length === 0 ? "" : " No batch here is called " + unknown.join(", ") + ".";
      place.replaceChildren();
      who.replaceChildren(...batches.map((batch) => entry(batch, drop)));
      if (batches.length < 2) {
        says.textContent = (batches.length === 1 ? batches[0].batch + " stands alone so far: choose another to set beside it." : "Choose two to four batches.") + notes;
        if (batches.length === 0) return;
      }
      document.title = batches.map(({ batch }) => batch).join(", ") + " side by side";
      draw(batches, notes);
    }

    const drop = (slug) => { location.hash = asked().filter((one) => one !== slug).join(","); add.focus(); };

    function draw(batches, notes) {
      if (batches.length === 1) {
        place.append(table("Alone", rowsOf(batches, Object.keys(PARTS)), batches));
        return;
      }
      const rows = rowsOf(batches, Object.keys(PARTS)).map((row) => ({ ...row, change: judge(row.cells) }));
      const of = (change) => rows.filter((row) => row.change === change);
      const told = [
        ["What differs", of("changed")], ["What the tasters found", rowsOf(batches, ["tasters"])], ["Recorded in some of them only", of("unknown")],
        ["Apart by no more than the readings can tell", of("within")], ["The same", of("same")],
      ];
      says.textContent = "Of " + rows.length + " things recorded, " + of("changed").length + (of("changed").length === 1 ? " differs" : " differ") + " by more than the readings leave open." + notes;
      for (const [caption, members] of told) if (members.length > 0) place.append(table(caption, members, batches));
    }

    add.addEventListener("change", function () {
      if (add.value === "") return;
      location.hash = [...asked().filter((slug) => options.has(slug)), add.value].join(",");
      add.value = "";
    });
    // The skip link writes the address too.
    window.addEventListener("hashchange", () => { if (location.hash !== "#text") show(); });
    show();
  });
})();
