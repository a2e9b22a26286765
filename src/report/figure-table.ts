/** What a figure is called and what it means: the one list that reports, charts and pages share. */
export interface FigureEntry {
  readonly id: string;
  readonly unit: string;
  readonly title: string;
  readonly meaning: string;
}

const entry = (id: string, unit: string, title: string, meaning: string): FigureEntry => ({ id, unit, title, meaning });

/** Every figure a batch can have, in the order it is told. */
export const FIGURE_TABLE: readonly FigureEntry[] = [
  entry("original-gravity", "SG", "Original gravity", "Specific gravity 20/20 of the wort in the fermenter"),
  entry("final-gravity", "SG", "Final gravity", "Specific gravity 20/20 at the last reading before packaging"),
  entry("latest-gravity", "SG", "Latest gravity", "Specific gravity 20/20 at the most recent reading of a batch that isn't packaged"),
  entry("original-extract", "P", "Original extract", "Extract of the wort, % by weight"),
  entry("apparent-extract", "P", "Apparent extract", "Extract that the final gravity reads as, alcohol ignored, % by weight"),
  entry("real-extract", "P", "Real extract", "Extract left in the beer once alcohol is allowed for, % by weight"),
  entry("abv", "%", "Alcohol by volume", "Alcohol by volume at 20 °C"),
  entry("abw", "%", "Alcohol by weight", "Alcohol by weight"),
  entry("apparent-attenuation", "%", "Apparent attenuation", "Part of the extract that seems fermented, alcohol ignored"),
  entry("real-attenuation", "%", "Real attenuation", "Part of the extract that was fermented"),
  entry("energy", "kJ/100mL", "Energy", "Energy from alcohol and extract"),
  entry("potential-extract", "kg", "Potential extract", "Dry extract the grist could give in a laboratory mash"),
  entry("mash-efficiency", "%", "Mash efficiency", "Extract in the kettle before the boil over potential"),
  entry("brewhouse-efficiency", "%", "Brewhouse efficiency", "Extract in the fermenter over potential"),
  entry("boil-off", "L/h", "Boil-off", "Water boiled away an hour, at 20 °C"),
  entry("bitterness", "IBU", "Bitterness", "Estimated bitterness from the kettle additions"),
  entry("color", "EBC", "Colour", "Estimated colour from the grist"),
  entry("fermentation-time", "h", "Fermentation time", "From pitching to the first of the readings that stay terminal"),
  entry("fermentation-temperature", "C", "Fermentation temperature", "Time-weighted mean from pitching to the dry hop or crash"),
  entry("fermentation-peak", "C", "Warmest in fermentation", "Highest temperature from pitching to the dry hop or crash"),
  entry("terminal-hours", "h", "Terminal before the dry hop", "How long the gravity had been unchanged within 0.001 when the first dry hop (or else the crash) began"),
  entry("dry-hop-mass", "g", "Dry hops", "Mass of all dry-hop additions"),
  entry("dry-hop-dose", "g/L", "Dry-hop dose", "Hops over the beer in the vessel at each addition, summed"),
  entry("dry-hop-oil", "mL/hL", "Hop oil added", "Essential oil in the hops over the beer, from the oil content stated for them"),
  entry("dry-hop-contact", "d", "Dry-hop contact", "Time in contact, weighted by mass over the additions"),
  entry("dry-hop-temperature", "C", "Temperature in contact", "Time-weighted mean over the contact, weighted by mass over the additions"),
  entry("dry-hop-gravity-drop", "SG", "Fall in gravity after the dry hop", "Last reading before the first addition less the final gravity"),
  entry("crash-temperature", "C", "Crash temperature", "Mean at the hold"),
  entry("crash-hours", "h", "Crash hold", "Hours within 1 °C of the set point before the transfer"),
  entry("crash-rate", "C/h", "Cooling rate", "Largest fall over any hour of the crash"),
  entry("crash-drawn", "L", "Gas drawn in, contraction alone", "Gas the vessel draws in while it cools if none dissolves"),
  entry("crash-drawn-most", "L", "Gas drawn in, at most", "Gas the vessel draws in while it cools if carbon dioxide dissolves to equilibrium"),
  entry("transfer-efficiency", "%", "Transfer efficiency", "Beer transferred over what went into the fermenter"),
  entry("loss-samples", "L", "Samples", "Beer taken as samples"),
  entry("loss-dumps", "L", "Dumps", "Slurry dumped: hops and yeast with the beer they hold"),
  entry("loss-left", "L", "Left behind", "Left in the vessel at the transfer, sediment included"),
  entry("loss-unaccounted", "L", "Unaccounted", "What the recorded volumes don't explain"),
  entry("loss-total", "L", "Total loss", "What went into the fermenter less what was packaged"),
  entry("package-yield", "%", "Package yield", "All packages over what went into the fermenter"),
  entry("residual-co2", "vol", "Carbon dioxide left after fermentation", "Dissolved at the warmest hour after fermentation ended, at the head pressure held"),
  entry("keg-pressure", "kPa", "Keg pressure", "Gauge pressure at equilibrium for the carbonation and temperature asked"),
  entry("priming-sugar", "g", "Priming sugar", "Sugar for the carbonation asked, all packages"),
  entry("package-oxygen", "mg/L", "Oxygen from the package", "Upper bound: all oxygen in the gas the purge left, over the beer"),
];

const BY_ID = new Map(FIGURE_TABLE.map((figure) => [figure.id, figure]));

/** Looks a figure up. Throws RangeError for an id that isn't in the table: a bug, not a brewer's mistake. */
export function figureEntry(id: string): FigureEntry {
  const found = BY_ID.get(id);
  if (found === undefined) throw new RangeError(`no figure is called "${id}"`);
  return found;
}
