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
  controls.append(label, input, count);
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
      const value = (row) => row.cells[column].dataset.sort || (head.className === "quantity" ? "" : row.cells[column].textContent);
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
  });
})();
