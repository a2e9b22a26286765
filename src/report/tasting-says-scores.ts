import { capitalised } from "./season-words.js";
import { SHOWN_AT } from "./tasting-limits.js";
import { movedText, scoreText } from "./tasting-score-words.js";
import { chanceText } from "./tasting-words.js";
import type { AttributeReport, TastingReport } from "./types.js";

/** Which way an attribute is shown to have moved: by the exact test with the sheet allowed for, and by an interval clear of 0. */
export function shownDirection({ adjusted, lift, low = lift, high = lift }: AttributeReport): "up" | "down" | undefined {
  if (adjusted === undefined || adjusted > SHOWN_AT) return undefined;
  if (low > 0) return "up";
  return high < 0 ? "down" : undefined;
}

/** How far one attribute moved, and what that supports. */
export function attributeSays(attribute: AttributeReport, { roles = { before: "before", after: "after" } }: Pick<TastingReport, "roles">): string {
  const { primary, tasters, p } = attribute;
  const name = `${capitalised(attribute.attribute)}${primary ? ", which was to decide" : ""}`;
  const moved = `${name}: ${whoMoved(attribute, roles.after)}, ${movedText(attribute.lift, attribute.low, attribute.high)}`;
  if (p === undefined) return `${moved}. ${tasters === 1 ? "One taster is" : `${tasters} tasters are`} too few to conclude from: described only.`;
  return `${moved} (${chances(attribute, p)}): ${changeVerdict(attribute)}`;
}

/** `7 of 8 scored after higher, 1 lower` */
export function whoMoved({ tasters, raised = 0, lowered = 0 }: AttributeReport, after: string): string {
  return lowered > raised
    ? `${lowered} of ${tasters} scored ${after} lower${raised > 0 ? `, ${raised} higher` : ""}`
    : `${raised} of ${tasters} scored ${after} higher${lowered > 0 ? `, ${lowered} lower` : ""}`;
}

/** `with 8 tasters a change under 1.1 would probably be missed` */
export function missedChange({ tasters, missed }: AttributeReport, change: string): string | undefined {
  return missed === undefined ? undefined : `with ${tasters} tasters a ${change} under ${scoreText(missed)} would probably be missed`;
}

function chances({ adjusted = 1 }: AttributeReport, p: number): string {
  return adjusted === p ? `exact p ${chanceText(p)}` : `exact p ${chanceText(p)}, ${chanceText(adjusted)} with the rest of the sheet allowed for`;
}

function changeVerdict(attribute: AttributeReport): string {
  const direction = shownDirection(attribute);
  if (direction !== undefined) return `${direction === "up" ? "a rise" : "a fall"} is shown.`;
  const { p = 1, adjusted = 1, low, high } = attribute;
  const why = adjusted <= SHOWN_AT ? " (the exact test and the interval don't agree)"
    : p <= SHOWN_AT ? " once the other attributes are allowed for"
      : low !== undefined && high !== undefined && (low > 0 || high < 0) ? " (the interval is clear of 0, the exact test is not)" : "";
  const missed = missedChange(attribute, "change");
  return `a change is not shown${why}${missed === undefined ? "" : `; ${missed}`}.`;
}
