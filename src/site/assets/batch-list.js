// Makes the table of batches sortable and filterable. The page is complete without it.
// It runs where the controls belong, before the table is read, so that nothing moves once it is painted.
(function () {
  "use strict";
  const controls = document.createElement("div");
  controls.className = "list-controls";
  const label = document.createElement("label");
  label.htmlFor = "batch-filter";
  label.textContent = "Show only batches with";
  const input = document.createElement("input");
  input.id = "batch-filter";
  input.type = "search";
  input.autocomplete = "off";
  const count = document.createElement("span");
  count.setAttribute("role", "status");
  const beside = document.createElement("a");
  beside.className = "beside";
  beside.href = "../compare.html";
  beside.textContent = "Set the chosen ones side by side";
  beside.hidden = true;
  controls.append(label, input, count, beside);
  document.documentElement.classList.add("scripted");
  document.currentScript.before(controls);

  document.addEventListener("DOMContentLoaded", function () {
    const table = document.querySelector(".batch-table");
    if (table === null) return;
    const body = table.tBodies[0];
    const rows = Array.from(body.rows);
    const words = new Map(rows.map((row) => [row, (row.textContent + " " + (row.dataset.words || "")).toLowerCase()]));

    function filter() {
      const wanted = input.value.toLowerCase().split(/\s+/).filter(Boolean);
      let shown = 0;
      for (const row of rows) {
        row.hidden = !wanted.every((word) => words.get(row).includes(word));
        if (!row.hidden) shown += 1;
      }
      count.textContent = wanted.length === 0 ? "" : shown + " of " + rows.length;
    }

    function sortBy(column, head) {
      const falling = head.getAttribute("aria-sort") === "ascending";
      for (const other of table.tHead.rows[0].cells) other.removeAttribute("aria-sort");
      head.setAttribute("aria-sort", falling ? "descending" : "ascending");
      const value = (row) => row.cells[column].dataset.sort || (head.classList.contains("quantity") ? "" : row.cells[column].textContent);
      rows.sort((one, other) => compare(value(one), value(other), falling ? -1 : 1));
      body.append(...rows);
    }

    // What isn't known stays at the end, whichever way the column is sorted.
    function compare(one, other, direction) {
      if (one === "" || other === "") return (one === "" ? 1 : 0) - (other === "" ? 1 : 0);
      const numbers = [Number(one), Number(other)];
      if (numbers.every(Number.isFinite)) return direction * (numbers[0] - numbers[1]);
      return direction * one.localeCompare(other, "en", { numeric: true });
    }

    Array.from(table.tHead.rows[0].cells).forEach(function (head, column) {
      const button = document.createElement("button");
      button.type = "button";
      button.className = "sort";
      button.textContent = head.textContent;
      button.addEventListener("click", () => sortBy(column, head));
      head.replaceChildren(button);
    });
    input.addEventListener("input", filter);

    // Up to four batches, in the order they are chosen.
    let chosen = [];
    const MOST = 4;
    table.addEventListener("change", function ({ target }) {
      if (target.type !== "checkbox") return;
      chosen = target.checked ? [...chosen, target.value] : chosen.filter((slug) => slug !== target.value);
      for (const box of body.querySelectorAll("input[type=checkbox]")) box.disabled = !box.checked && chosen.length >= MOST;
      beside.hidden = chosen.length < 2;
      beside.href = "../compare.html#" + chosen.join(",");
    });
  });
})();
