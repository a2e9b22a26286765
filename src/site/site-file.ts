/** One file of the site. Equal keys mean equal bytes; a key is taken when it is asked for, as a build of the whole site asks for none. */
export interface SiteFile {
  /** Inside the site, forward slashes, always with an extension. */
  readonly path: string;
  readonly key: string;
  readonly render: () => string;
  /** Of a page that search and site map list: what it is called and about. */
  readonly listed?: { readonly title: string; readonly description: string };
}

/** A file that doesn't depend on the log: style, script, font. */
export interface SiteAsset {
  readonly path: string;
  readonly bytes: Uint8Array;
}
