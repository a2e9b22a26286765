/** How many numbers each path command takes, and which of them are x (even) and y (odd) positions. */
const ARGUMENTS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, A: 7, C: 6, Q: 4, Z: 0 };
const NUMBER = /-?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi;
const POLYLINE = /^[-\d.,ML]*$/;
const COMMAND = /([a-z])([^a-z]*)/gi;

interface Segment {
  readonly command: string;
  readonly values: readonly number[];
}

/** A tenth of a pixel, which is as fine as a drawing needs, in as few characters as SVG allows. */
function printNumber(value: number): string {
  return printTenths(tenth(value));
}

function printTenths(tenths: number): string {
  const size = Math.abs(tenths);
  const whole = Math.floor(size / 10);
  const rest = size % 10;
  const text = rest === 0 ? String(whole) : `${whole === 0 ? "" : whole}.${rest}`;
  return tenths < 0 ? `-${text}` : text;
}

/** Path data moved by an offset and printed short: positions to a tenth of a pixel, lines as steps from the point before. */
export function compactPath(data: string, dx: number, dy: number): string {
  return POLYLINE.test(data) ? compactPolyline(data, dx, dy) : compactCommands(data, dx, dy);
}

/** The quick way for what most of a drawing is: lines from point to point. */
function compactPolyline(data: string, dx: number, dy: number): string {
  let x = 0;
  let y = 0;
  let text = "";
  for (const line of data.split("M").slice(1)) {
    line.split("L").forEach((point, index) => {
      const comma = point.indexOf(",");
      const nextX = tenth(Number(point.slice(0, comma)) + dx);
      const nextY = tenth(Number(point.slice(comma + 1)) + dy);
      text += index === 0 ? `M${join([printTenths(nextX), printTenths(nextY)])}` : step(nextX - x, nextY - y);
      x = nextX;
      y = nextY;
    });
  }
  return text;
}

function compactCommands(data: string, dx: number, dy: number): string {
  let x = 0;
  let y = 0;
  let text = "";
  for (const { command, values } of segmentsOf(data)) {
    const moved = movedBy(command, values, dx, dy);
    if (command === "L" && moved[0] !== undefined && moved[1] !== undefined) {
      text += step(tenth(moved[0]) - tenth(x), tenth(moved[1]) - tenth(y));
    } else {
      text += command + join(moved.map(printNumber));
    }
    [x, y] = endOf(command, moved, x, y);
  }
  return text;
}

function segmentsOf(data: string): readonly Segment[] {
  return [...data.matchAll(COMMAND)].flatMap(([, command = "", rest = ""]) => {
    const values = (rest.match(NUMBER) ?? []).map(Number);
    const size = ARGUMENTS[command.toUpperCase()] ?? 0;
    if (size === 0) return [{ command, values: [] }];
    return Array.from({ length: Math.max(1, values.length / size) }, (_, index) =>
      ({ command: command === "M" && index > 0 ? "L" : command, values: values.slice(index * size, (index + 1) * size) }));
  });
}

function movedBy(command: string, values: readonly number[], dx: number, dy: number): readonly number[] {
  if (command === "H") return values.map((value) => value + dx);
  if (command === "V") return values.map((value) => value + dy);
  if (command === "A") return values.map((value, index) => index === 5 ? value + dx : index === 6 ? value + dy : value);
  if (command === command.toLowerCase()) return values;
  return values.map((value, index) => value + (index % 2 === 0 ? dx : dy));
}

function endOf(command: string, values: readonly number[], x: number, y: number): [number, number] {
  const last = values.at(-1) ?? 0;
  const beforeLast = values.at(-2) ?? 0;
  if (command === "H") return [last, y];
  if (command === "V") return [x, last];
  if (command === "h") return [x + last, y];
  if (command === "v") return [x, y + last];
  if (command === command.toLowerCase()) return [x + beforeLast, y + last];
  return values.length < 2 ? [x, y] : [beforeLast, last];
}

const tenth = (value: number): number => Math.round(value * 10);

function step(dx: number, dy: number): string {
  if (dx === 0 && dy === 0) return "";
  if (dy === 0) return `h${printTenths(dx)}`;
  if (dx === 0) return `v${printTenths(dy)}`;
  return `l${join([printTenths(dx), printTenths(dy)])}`;
}

/** Numbers side by side: a minus sign separates, and so does a point after a number that has one. */
function join(numbers: readonly string[]): string {
  return numbers.reduce((text, number, index) => {
    const previous = numbers[index - 1];
    const separate = previous !== undefined && !number.startsWith("-") && !(number.startsWith(".") && previous.includes("."));
    return text + (separate ? " " : "") + number;
  }, "");
}
