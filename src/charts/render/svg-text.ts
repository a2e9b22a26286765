/** Text as it stands between two tags. */
export function escapeText(text: string): string {
  return withoutControls(text).replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/** Characters that no document may hold, whatever a record says. */
function withoutControls(text: string): string {
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/g, "");
}
