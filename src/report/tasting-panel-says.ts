import { listed } from "./season-words.js";
import { DESCRIBED_ONLY } from "./tasting-limits.js";
import { scoreText } from "./tasting-score-words.js";
import type { PanelReport } from "./types.js";

/** What repeats say of the tasters, in whole sentences; of five or fewer it is only described. */
export function panelSays({ tasters, servings, cells, agreement, order }: Omit<PanelReport, "says">, all: number): string[] {
  const scatters = tasters.map(({ scatter }) => scatter);
  const typical = Math.sqrt(scatters.reduce((total, each) => total + each ** 2, 0) / scatters.length);
  const unsteady = tasters.filter(({ repeatability }) => repeatability?.low !== undefined && repeatability.low <= 0).map(({ taster }) => taster);
  return [
    `Every cup was served ${servings === 2 ? "twice" : `${servings} times`} to ${tasters.length === 1 ? "one taster" : `${tasters.length} tasters`}; one taster's scores for the same cup scatter by ${scoreText(typical, 0.5)} points (standard deviation). The servings of a taster are averaged above, never counted as further tasters.`,
    ...(tasters.length < all ? [`Tasters who missed a serving are left out here: ${all - tasters.length} of ${all}.`] : []),
    ...(unsteady.length === 0 ? [] : [`That they repeat themselves is not shown for ${listed(unsteady)}: the interval of their repeatability reaches down to none.`]),
    ...(agreement === undefined || order === undefined ? [] : [
      `Between tasters: a single score agrees with another's by ICC ${shareOfOne(agreement.value)}${agreement.low === undefined || agreement.high === undefined ? "" : ` (${shareOfOne(agreement.low)} to ${shareOfOne(agreement.high)})`}; their order of the ${cells} scored lines by W ${shareOfOne(order.w)}, where tasters who don't agree at all reach ${shareOfOne(order.chanceFloor)} on average. Attributes differ in strength by themselves, which anyone can taste, so these figures flatter the panel.`,
    ]),
    ...(tasters.length <= DESCRIBED_ONLY ? [`${tasters.length === 1 ? "One taster is" : `${tasters.length} tasters are`} too few to conclude from: this describes them only.`] : []),
  ];
}

function shareOfOne(value: number): string {
  return value.toFixed(2).replace("-", "\u2212");
}
