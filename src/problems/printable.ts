/** Control characters, and marks that turn the direction of writing: they could disturb a terminal or disguise a text. */
// eslint-disable-next-line no-control-regex -- these are what must not reach a terminal
const UNPRINTABLE = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]+/gu;

/** A text on one line that can be shown anywhere. */
export function printable(text: string): string {
  return text.replaceAll(UNPRINTABLE, " ");
}
