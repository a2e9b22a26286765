/**
 * The address of a file of the site where it is published.
 *
 * @param url of the site's root, with or without a slash at its end
 * @param path inside the site
 */
export function siteAddress(url: string, path: string): string {
  return new URL(path, url.endsWith("/") ? url : `${url}/`).href;
}
