// Draws two figures of a season, when asked: #x=dry-hop-dose&y=loss-total&by=form
(function () {
  "use strict";
  const SHAPES = ["M-4 0a4 4 0 1 0 8 0a4 4 0 1 0-8 0", "M-4-4h8v8h-8z", "M0-5L5 4H-5z", "M0-6L6 0 0 6-6 0z", "M-4-4L4 4M4-4L-4 4"];
  const INKS = ["var(--chart-2)", "var(--chart-1)", "var(--chart-3)"];
  const SVG = "http://www.w3.org/2000/svg";

  /** Only what the data have. */
  function parseChoice(hash, data) {
    const asked = new URLSearchParams(hash.replace(/^#/, ""));
    const known = (list, id) => (list.some((each) => each.id === id) ? id : "");
    const first = (wanted, other) => (wanted !== other && known(data.axes, wanted)) || (data.axes.find(({ id }) => id !== other) || { id: "" }).id;
    const x = known(data.axes, asked.get("x")) || first("dry-hop-dose", "");
    return { x, y: known(data.axes, asked.get("y")) || first("loss-total", x), by: known(data.groupings, asked.get("by")) };
  }

  function choiceHash({ x, y, by }) {
    const parts = new URLSearchParams({ x, y });
    if (by !== "") parts.set("by", by);
    return "#" + parts;
  }

  function pointsOf(data, choice) {
    const find = (list, id) => list.find((each) => each.id === id);
    const [x, y, by] = [find(data.axes, choice.x), find(data.axes, choice.y), find(data.groupings, choice.by)];
    return data.batches.flatMap(({ batch, slug }, index) =>
      x && y && x.values[index] !== null && y.values[index] !== null
        ? [{ batch, slug, x: x.values[index], y: y.values[index], group: by ? by.values[index] || "not recorded" : "" }] : []);
  }

  function axisTicks(values) {
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const raw = (high - low || Math.abs(high) || 1) / 4;
    const power = 10 ** Math.floor(Math.log10(raw));
    const step = power * ([1, 2, 5, 10].find((each) => each * power >= raw * 0.999) || 10);
    const [from, to] = [Math.floor(low / step + 1e-9), Math.ceil(high / step - 1e-9)];
    const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    const count = Math.max(1, to - from) + 1;
    return Array.from({ length: count }, (_, index) => Number(((from + index) * step).toFixed(decimals)));
  }

  if (typeof document === "undefined") {
    globalThis.gylebookExplore = { parseChoice, choiceHash, pointsOf, axisTicks };
    return;
  }

  const data = window.gylebookSeason;
  const host = document.getElementById("explore-host");
  const base = host.dataset.batches;
  let choice = parseChoice(location.hash, data);

  function given(element, attributes, content) {
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.append(...content);
    return element;
  }
  const make = (name, attributes, ...content) => given(document.createElement(name), attributes, content);
  const mark = (name, attributes, ...content) => given(document.createElementNS(SVG, name), attributes, content);
  const heading = ({ title, unit }) => (unit === "" ? title : title + ", " + unit);
  const axisOf = (id) => data.axes.find((axis) => axis.id === id);

  function chooser(part, words, list) {
    const select = make("select", { id: "explore-" + part }, ...list.map(({ id, title }) => make("option", { value: id }, title)));
    select.value = choice[part];
    select.addEventListener("change", function () {
      choice = { ...choice, [part]: select.value };
      history.replaceState(null, "", choiceHash(choice));
      draw();
    });
    return make("p", {}, make("label", { for: "explore-" + part }, words), " ", select);
  }

  function shape(kind, x, y) {
    const ink = INKS[kind % INKS.length];
    return mark("path", { d: SHAPES[kind % SHAPES.length], transform: "translate(" + x + " " + y + ")", fill: ink, stroke: ink });
  }

  /** Beside its point where there is room; the table has every name. */
  function placeName(point, taken, width) {
    const wide = point.batch.length * 7.6;
    for (const [dx, dy] of [[8, 4], [-8 - wide, 4], [-wide / 2, -9], [-wide / 2, 18]]) {
      const box = [point.px + dx, point.py + dy - 11, point.px + dx + wide, point.py + dy + 3];
      if (box[0] < 0 || box[2] > width || taken.some((other) => box.every((end, i) => (i < 2 ? end < other[i + 2] : other[i - 2] < end)))) continue;
      taken.push(box);
      return { x: box[0], y: point.py + dy };
    }
    return undefined;
  }

  function picture(points, groups) {
    const width = host.clientWidth < 560 ? 320 : 680;
    const [left, top, right, bottom] = [48, 28, width - 14, width === 320 ? 250 : 350];
    const svg = mark("svg", { class: "explore-chart", viewBox: "0 0 " + width + " " + (bottom + 44), role: "img", "aria-label": axisOf(choice.y).title + " against " + axisOf(choice.x).title + ", " + points.length + " batches" });
    const [xs, ys] = [axisTicks(points.map(({ x }) => x)), axisTicks(points.map(({ y }) => y))];
    const scale = (ticks, from, to) => (value) => from + ((value - ticks[0]) / (ticks[ticks.length - 1] - ticks[0] || 1)) * (to - from);
    const [toX, toY] = [scale(xs, left + 8, right - 8), scale(ys, bottom, top)];
    for (const tick of ys) svg.append(mark("path", { class: "explore-grid", d: "M" + left + " " + toY(tick) + "H" + right }), mark("text", { x: left - 6, y: toY(tick) + 4, "text-anchor": "end" }, String(tick)));
    for (const tick of xs) svg.append(mark("text", { x: toX(tick), y: bottom + 18, "text-anchor": "middle" }, String(tick)));
    svg.append(mark("text", { x: 0, y: 12 }, heading(axisOf(choice.y))), mark("text", { x: left, y: bottom + 38 }, heading(axisOf(choice.x))));
    const placed = points.map((point) => ({ ...point, px: toX(point.x), py: toY(point.y) }));
    const taken = placed.map(({ px, py }) => [px - 6, py - 6, px + 6, py + 6]);
    for (const point of placed) {
      svg.append(shape(Math.max(0, groups.indexOf(point.group)), point.px, point.py));
      const name = placeName(point, taken, width);
      if (name !== undefined) svg.append(mark("text", name, point.batch));
    }
    return svg;
  }

  function key(groups) {
    return make("ul", { class: "explore-key" }, ...groups.map(function (group, index) {
      const sample = mark("svg", { viewBox: "-8 -8 16 16", width: 16, height: 16, "aria-hidden": "true" }, shape(index, 0, 0));
      return make("li", {}, sample, " ", make("bdi", {}, group));
    }));
  }

  function table(points) {
    const heads = ["Batch", heading(axisOf(choice.x)), heading(axisOf(choice.y))].concat(choice.by === "" ? [] : ["Group"]);
    const rows = points.map(({ batch, slug, x, y, group }) => make("tr", {}, make("th", { scope: "row" }, make("a", { href: base + encodeURIComponent(slug) + ".html" }, batch)),
      ...[x, y].concat(choice.by === "" ? [] : [group]).map((cell) => make("td", {}, String(cell)))));
    return make("details", {}, make("summary", {}, "The numbers"), make("table", { class: "numbers" },
      make("thead", {}, make("tr", {}, ...heads.map((head) => make("th", { scope: "col" }, head)))), make("tbody", {}, ...rows)));
  }

  const result = make("div", {});
  const said = make("p", { role: "status" });

  function draw() {
    const points = pointsOf(data, choice);
    const groups = [...new Set(points.map(({ group }) => group))];
    said.textContent = points.length < 2 ? "Fewer than two batches have both." : points.length + " of the season’s " + data.batches.length + " batches have both.";
    result.replaceChildren(...(points.length < 2 ? [] : [picture(points, groups), ...(choice.by === "" ? [] : [key(groups)]), table(points)]));
  }

  function build() {
    const choosers = [
      chooser("x", "Across", data.axes), chooser("y", "Upright", data.axes),
      chooser("by", "Marked by", [{ id: "", title: "nothing" }].concat(data.groupings)),
    ];
    host.replaceChildren(make("div", { class: "explore-choices" }, ...choosers), said, result);
    draw();
  }

  window.addEventListener("hashchange", function () {
    if (!/[#&][xy]=/.test(location.hash)) return;
    choice = parseChoice(location.hash, data);
    build();
  });
  build();
  if (host.dataset.asked === "click") document.getElementById("explore-x").focus();
  else host.scrollIntoView();
})();
