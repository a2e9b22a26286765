import { aimsAgree, mappedLogNamesColumns, purgeIsOneWay, type RecordRule } from "./in-record.js";
import { dryHopPrecedesTransfer, dumpsPrecedeTransfer, nothingPrecedesBrewDay, removalFollowsAddition, stepsFollowEachOther } from "./order-of-events.js";
import { attributesAreSpeltAlike, countsFitTasters, samplesAreKnown, samplesAreNamed, votesSum } from "./tasting.js";

/** Every rule between the fields of one record; a new rule is one line here. */
export const RECORD_RULES: readonly RecordRule[] = [
  aimsAgree, nothingPrecedesBrewDay, removalFollowsAddition, dryHopPrecedesTransfer, stepsFollowEachOther, dumpsPrecedeTransfer,
  purgeIsOneWay, mappedLogNamesColumns, samplesAreNamed, samplesAreKnown, countsFitTasters, votesSum, attributesAreSpeltAlike,
];
