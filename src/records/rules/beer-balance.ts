import { nearestName, problemAt, type Place, type Problem } from "../../problems/index.js";
import type { Quantity } from "../../units/index.js";
import type { Equipment, PartialBatch } from "../schema/index.js";
import type { FieldPath } from "../text/yaml-places.js";

export interface BalanceInput {
  readonly batch: PartialBatch;
  readonly equipment: Equipment | undefined;
  readonly placeOf: (path: FieldPath) => Place;
}

/** A home vessel's marks where nothing better is known (common practice); wide, so that only what can't be is refused. */
const USUAL_LIMIT_L = 0.25;
/** Beer read cold or warm differs from its volume at 20 °C by less than this. */
const TEMPERATURE_SHARE = 0.01;

type Volumes = readonly Quantity<"volume">[];

/** More beer can't come out of a fermenter than went in, nor into packages than was moved. */
export function beerBalances({ batch, equipment, placeOf }: BalanceInput): Problem[] {
  const limit = equipment?.readings?.volume?.within?.value ?? USUAL_LIMIT_L;
  const drawn = drawnOff(batch);
  const moves = batch.transfer ?? [];
  const moved = present(moves.map(({ volume }) => volume));
  const left = present(moves.map(({ left: rest }) => rest));
  const packaged = present((batch.package ?? []).map(({ volume }) => volume));
  const added = addedLitres(batch);
  const into = batch.fermenter?.volume;
  const path: FieldPath = moved.length > 0 ? ["transfer", 0, "volume"] : ["package", 0, "volume"];
  const largest = moved.toSorted((a, b) => b.value - a.value).slice(0, 1);
  // Several moves may follow each other or lead to several vessels: only what is certain is counted.
  const out = moved.length > 0 && total(largest) >= total(packaged) ? largest : packaged;
  const problems = into === undefined ? [] : excess({ into: [into], extraL: added, out: [...drawn, ...left, ...out], limit });
  const onlyMove = moves.length === 1 ? moved : [];
  const overfilled = onlyMove.length === 0 ? [] : excess({ into: onlyMove, extraL: added, out: packaged, limit });
  return [
    ...problems.map((given) => problemAt("record/more-out-than-in", { ...placeOf(path), found: given.found }, given)),
    ...(problems.length > 0 ? [] : overfilled.map((given) => problemAt("record/more-out-than-in", { ...placeOf(["package", 0, "volume"]), found: given.found }, given))),
  ];
}

interface Sides {
  readonly into: Volumes;
  readonly extraL: number;
  readonly out: Volumes;
  /** ± of a volume that carries none of its own, litres. */
  readonly limit: number;
}

function excess({ into, extraL, out, limit }: Sides): { into: string; within: string; sum: string; found: string }[] {
  const intoL = total(into) + extraL;
  const outL = total(out);
  const withinL = [...into, ...out].reduce((sum, volume) => sum + (volume.limit ?? limit), 0) + TEMPERATURE_SHARE * intoL;
  if (outL <= intoL + withinL) return [];
  return [{ into: litres(intoL), within: litres(withinL), sum: out.map(({ text }) => text).join(" + "), found: litres(outL) }];
}

/** Samples and dumps up to the last transfer; undated ones count, later ones were drawn from the package. */
function drawnOff(batch: PartialBatch): Volumes {
  const moves = (batch.transfer ?? []).flatMap(({ at }) => (at === undefined ? [] : [at.text])).toSorted();
  const last = moves.at(-1);
  const before = ({ at }: { readonly at?: { readonly text: string } }): boolean => at === undefined || last === undefined || at.text <= last;
  return present([...(batch.samples ?? []).filter(before), ...(batch.dumps ?? []).filter(before)].map(({ volume }) => volume));
}

/** What additions and hops can have added at most: a kilogram as a litre where only the mass is known. */
function addedLitres(batch: PartialBatch): number {
  const additions = (batch.additions ?? []).map(({ amount, volume }) =>
    volume?.value ?? (amount === undefined ? 0 : amount.kind === "volume" ? amount.value : amount.value / 1000));
  const hops = (batch.dryHops ?? []).map(({ amount }) => (amount?.value ?? 0) / 1000);
  return [...additions, ...hops].reduce((sum, value) => sum + value, 0);
}

/** The brewery a batch names, or that it isn't defined. */
export function equipmentOf({ batch, placeOf }: Omit<BalanceInput, "equipment">, known: ReadonlyMap<string, Equipment>): { equipment?: Equipment; problems: Problem[] } {
  const name = batch.equipment;
  const equipment = name === undefined ? undefined : known.get(name);
  if (equipment !== undefined) return { equipment, problems: [] };
  if (name === undefined) return { problems: [] };
  return { problems: [problemAt("record/equipment-unknown", placeOf(["equipment"]), { nearest: nearestName(name, known.keys()), known: [...known.keys()].slice(0, 8).join(", ") })] };
}

const present = (volumes: readonly (Quantity<"volume"> | undefined)[]): Volumes => volumes.filter((volume) => volume !== undefined);
const total = (volumes: Volumes): number => volumes.reduce((sum, { value }) => sum + value, 0);
const litres = (value: number): string => `${Number(value.toFixed(2))} L`;
