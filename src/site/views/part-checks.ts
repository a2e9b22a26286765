import type { BatchReport, CheckReport } from "../../report/index.js";
import type { BatchPartId } from "./batch-parts.js";

/** Where each check is told; one that isn't listed is told with what happened. */
const CHECK_PART: Readonly<Record<string, BatchPartId>> = {
  "terminal-before-dry-hop": "dry-hop", "contact-time": "dry-hop", "contact-temperature": "dry-hop", "hop-creep": "dry-hop",
  "vdk-before-crash": "what-happened", "crash-hold": "what-happened", "crash-vessel": "what-happened", "crash-air": "what-happened", "crash-freezing": "what-happened",
  "dumped-before-transfer": "ledger", sanitised: "ledger", "ledger-closes": "ledger",
  "package-purge": "package", "package-pressure": "package", "bottle-carbonation": "package",
  "style-targets": "aim", "tasting-comparable": "tasters",
};

/** The order of urgency: what failed is read first. */
const URGENCY: Readonly<Record<CheckReport["verdict"], number>> = { fail: 0, watch: 1, unknown: 2, pass: 3 };

/** The checks told in one part, those that failed first. */
export function checksOf(report: BatchReport, part: BatchPartId): CheckReport[] {
  return report.checks
    .filter(({ id }) => (CHECK_PART[id] ?? "what-happened") === part)
    .toSorted((one, other) => URGENCY[one.verdict] - URGENCY[other.verdict]);
}
