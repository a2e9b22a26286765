/** A comment with a comma or a quotation mark in it goes between quotation marks. @param {string} cell */
function formatCell(cell) {
  return /[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** @param {string[]} header @param {(string | number)[][]} rows @returns {string} comma-separated, a header line first */
export function formatTable(header, rows) {
  return `${[header, ...rows].map((row) => row.map((cell) => formatCell(String(cell))).join(",")).join("\n")}\n`;
}
