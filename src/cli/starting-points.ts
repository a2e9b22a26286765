/** Commented starting points: only what is required is filled in, the rest shows how it is written. */

/** Keeps what is built out of a public repository: keys, ballots and judges' names are never for publication. */
export const GITIGNORE = `# Sheets and keys: not for publication. Sheets are drawn again from the seed.
_private/
# The site, which is built again from the records.
_site/
`;

/** A batch record. `date` is the day to fill in as the brew date. */
export function batchRecord(name: string, date: string): string {
  const on = (days: number): string => new Date(Date.parse(`${date}T00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
  return `---
title: ${name}
batch: ${name}                     # its number in the log; no other batch may have it
brewed: ${date}

# Remove the # in front of what you recorded. What you leave out is shown as not recorded;
# nothing that can be computed is ever written here. Every quantity carries its unit.

# brewer: your-handle
# season: pales                    # batches of one season share a page
# series: ${name}                  # versions of one beer are compared with each other
# style: American Pale Ale         # a name in shared/styles.yaml, or one that comes with the tool
# equipment: first-kit             # a name in shared/equipment.yaml

# aim:
#   words: More orange peel on the nose, bitterness where it was.
#   raise: [orange peel]
#   hold: [bitterness]
#   primary: orange peel

# plan:
#   original_gravity: 1.050
#   final_gravity: 1.011
#   dry_hop: 5 g/L
#   dry_hop_temperature: 12 C to 14 C
#   dry_hop_for: 4 d
#   crash: 2 C
#   crash_for: 2 d
#   carbonation: 2.4 vol

# grist:
#   - {malt: Pale malt, amount: 4.6 kg, extract: 80 %, color: 5 EBC}

# mash: {water: 15 L, ph: 5.35, rests: [{temperature: 66 C, for: 60 min}]}

# boil:
#   for: 60 min
#   before: {volume: 27 L at 70 C, gravity: 1.042}
#   after: {volume: 24 L at 98 C, gravity: 1.050}

# hops:
#   - {hop: Cascade, amount: 20 g, alpha: 6.2 %, boil: 60 min}

# yeast: {strain: English ale, form: dry, amount: 11 g, pitched: ${date} 16:00}

# fermenter: {volume: 22.4 L, gravity: 1.050, temperature: 18 C}

# fermentation:
#   readings:
#     - {at: ${on(9)} 08:00, gravity: 1.012, temperature: 19 C}
#     - {at: ${on(11)} 08:00, gravity: 1.011, temperature: 19 C, diacetyl: clear}

# dry_hops:
#   - {hop: Cascade, form: pellet, amount: 110 g, added: ${on(11)} 19:00, held: loose, into: fermenter, purged: true}

# crash: {set: 2 C, from: ${on(15)} 19:00, vent: gas}   # gas, airlock or sealed

# dumps:
#   - {at: ${on(16)} 19:00, volume: 0.6 L}

# transfer: {at: ${on(17)} 19:00, volume: 19 L at 2 C, left: 1.4 L, closed: true, sanitised: true}

# package: {date: ${on(17)}, into: keg, volume: 18.6 L, carbonation: 2.4 vol, temperature: 4 C}

# publish: false                   # keeps the batch out of the site
---
Notes: what you saw, smelled and would do differently.
`;
}

/** A log's club.yaml. */
export function clubFile(name: string, zone: string): string {
  return `name: ${name}
zone: ${zone}   # every date in the log is civil time of this zone
units: metric                       # metric or us: which comes first; the other follows in brackets
# url: https://example.org/beer/    # only feeds, calendars and share cards need it
# altitude: 0 m
`;
}

export const EQUIPMENT = `# Limits are what each instrument can be trusted to, plus or minus. Without them common limits are used, and said so.
first-kit:
  # fermenter: {shape: conical, volume: 30 L, sealed: true, pressure: 100 kPa, vacuum: 0 kPa}   # what its maker rates it for; leave out what you don't know
  # boil_off: 3 L/h
  readings:
    hydrometer: {within: 0.001, calibrated: 20 C}
    thermometer: {within: 0.5 C}
    scale: {within: 1 g}
    volume: {within: 0.25 L}
`;

/** A competition's index.md. */
export function competitionRecord(name: string, date: string): string {
  return `---
name: ${name}
date: ${date}
release: ${date} 18:00              # results stay out of the site until then
# agree_within: 7                   # points that judges of one beer may differ by
# places: 3
# feedback: private                 # private, entrants or public
# handles: hidden                   # shown or hidden
---
Notes on the competition.
`;
}

/** The competition's tables, each with its header only. */
export const COMPETITION_TABLES: Readonly<Record<string, string>> = {
  "entries.csv": "entry,code,flight,style,brewer,title,batch,allergens,declared\n",
  "judges.csv": "judge,brewer,flights\n",
  "scores.csv": "flight,judge,code,aroma,appearance,flavor,mouthfeel,overall,comment\n",
  "finals.csv": "flight,code,score,place,decision\n",
  "best-of-show.csv": "judge,code,rank\n",
};
