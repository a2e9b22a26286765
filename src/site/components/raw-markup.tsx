/**
 * The one place where markup goes in unescaped. Only for what the program drew
 * itself (charts) or what the Markdown renderer has made safe; never for text of a record.
 */
export function RawMarkup({ markup, class: name }: { readonly markup: string; readonly class: string }) {
  return <div class={name} dangerouslySetInnerHTML={{ __html: markup }} />;
}
