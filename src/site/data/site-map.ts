import { textFile } from "../page/page-file.js";
import { siteAddress } from "../page/site-address.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** Every page worth finding, for search engines (sitemaps.org, protocol 0.9). Addresses must be whole, so there is none without `url`. */
export function siteMapFiles(site: Site, pages: readonly SiteFile[]): SiteFile[] {
  const { url } = site.inputs.log.club;
  if (url === undefined) return [];
  const paths = pages.filter(({ listed }) => listed !== undefined).map(({ path }) => path);
  return [textFile(site, "sitemap.xml", [url, paths], () => siteMapText(paths.map((path) => siteAddress(url, path))))];
}

function siteMapText(addresses: readonly string[]): string {
  const lines = addresses.map((address) => `<url><loc>${escaped(address)}</loc></url>`);
  return `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${lines.join("\n")}\n</urlset>\n`;
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll("'", "&apos;");
}
