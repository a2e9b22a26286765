/** How many numbers each path command takes, and which of them are x (even) and y (odd) positions. */
const ARGUMENTS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, A: 7, C: 6, Q: 4, Z: 0 };
const NUMBER = /-?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi;
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

/** A point of a line, px; the line is broken where `defined` is false. */
export interface LinePoint {
  readonly x?: number;
  readonly y?: number;
  readonly defined?: boolean;
}

/** Path data of a line from point to point, moved by an offset: positions to a tenth of a pixel, each as a step from the point before. */
export function compactLine(points: readonly LinePoint[], dx: number, dy: number): string {
  let text = "";
  let x = 0;
  let y = 0;
  let length = 0;
  for (const point of points) {
    if (point.defined === false) {
      text += endOfRun(length);
      length = 0;
      continue;
    }
    const nextX = tenth((point.x ?? 0) + dx);
    const nextY = tenth((point.y ?? 0) + dy);
    text += length === 0 ? `M${printPair(nextX, nextY)}` : step(nextX - x, nextY - y);
    x = nextX;
    y = nextY;
    length += 1;
  }
  return text + endOfRun(length);
}

/** A single point is drawn as a dot by the ends of its stroke, which a path has only if it is closed. */
function endOfRun(length: number): string {
  return length === 1 ? "Z" : "";
}

/** Path data moved by an offset and printed short: positions to a tenth of a pixel, lines as steps from the point before. */
export function compactPath(data: string, dx: number, dy: number): string {
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
  return `l${printPair(dx, dy)}`;
}

/** Two tenths side by side, as `join` has them, without lists: most of a drawing is made of these. */
function printPair(one: number, other: number): string {
  const isSeparate = other < 0 || (other > 0 && other < 10 && one % 10 !== 0);
  return isSeparate ? printTenths(one) + printTenths(other) : `${printTenths(one)} ${printTenths(other)}`;
}

/** Numbers side by side: a minus sign separates, and so does a point after a number that has one. */
function join(numbers: readonly string[]): string {
  return numbers.reduce((text, number, index) => {
    const previous = numbers[index - 1];
    const separate = previous !== undefined && !number.startsWith("-") && !(number.startsWith(".") && previous.includes("."));
    return text + (separate ? " " : "") + number;
  }, "");
}
