/**
 * Markdown with everything inside fenced blocks and code spans replaced by spaces: what stands there is
 * shown as text. Line breaks and positions stay. One pass over the text.
 */
export function blankCode(text: string): string {
  return blankSpans(blankFences(text));
}

function blankFences(text: string): string {
  let fence: string | undefined;
  return text.split("\n").map((line) => {
    const [, mark] = /^ {0,3}(`{3,}|~{3,})/u.exec(line) ?? [];
    if (fence === undefined) {
      // A fence of backticks can't have a backtick after it on its line: that is a code span.
      if (mark === undefined || (mark.startsWith("`") && line.trimStart().slice(mark.length).includes("`"))) return line;
      fence = mark;
      return blank(line);
    }
    const closes = mark !== undefined && mark[0] === fence[0] && mark.length >= fence.length && line.trim() === mark;
    if (closes) fence = undefined;
    return blank(line);
  }).join("\n");
}

function blankSpans(text: string): string {
  const runs = [...text.matchAll(/`+/gu)];
  // The next run of the same length closes a span; found from the back, so that each is looked at once.
  const nextOfLength = new Map<number, number>();
  const closes = runs.map((): number | undefined => undefined);
  for (let at = runs.length - 1; at >= 0; at -= 1) {
    const length = runs[at]?.[0].length ?? 0;
    closes[at] = nextOfLength.get(length);
    nextOfLength.set(length, at);
  }
  let result = "";
  let copied = 0;
  for (let at = 0; at < runs.length; at += 1) {
    const close = closes[at];
    const [opening, closing] = [runs[at], close === undefined ? undefined : runs[close]];
    if (close === undefined || opening === undefined || closing === undefined) continue;
    const end = closing.index + closing[0].length;
    result += text.slice(copied, opening.index) + blank(text.slice(opening.index, end));
    copied = end;
    at = close;
  }
  return result + text.slice(copied);
}

const blank = (text: string): string => text.replaceAll(/[^\n]/gu, " ");
