import type { JudgeRow } from "../../../records/index.js";

/** Two to four judges a flight, three held best (published practice). */
const WANTED = 3;
export const FEWEST_JUDGES = 2;

/** A flight and who may not sit at it. */
export interface Table {
  readonly flight: string;
  /** Judges with an own entry in it. */
  readonly barred: ReadonlySet<string>;
}

export interface Assignment {
  /** Judges by flight. */
  readonly judges: ReadonlyMap<string, readonly string[]>;
}

/** A flight that can't have its two judges. */
export interface TooFewJudges {
  readonly flight: string;
  readonly free: readonly string[];
  readonly barred: readonly string[];
}

/**
 * Seats judges so that nobody meets an own entry, each at as few tables as will do. Flights recorded in judges.csv stay.
 *
 * Source: matching by augmenting paths (Kuhn 1955; Hopcroft & Karp 1973), each judge taking several tables. From memory.
 *
 * @param judges in the order in which they are asked
 */
export function assignJudges(tables: readonly Table[], judges: readonly JudgeRow[]): Assignment | TooFewJudges {
  const wanted = new Map(tables.map((table) => [table.flight, wantedAt(table, judges)]));
  const short = tables.find(({ flight }) => (wanted.get(flight) ?? 0) < FEWEST_JUDGES);
  if (short !== undefined) return tooFew(short, judges);
  for (let most = 1; most <= tables.length; most += 1) {
    const seated = new Seating(tables, judges, most).seat(wanted);
    if (seated !== undefined) return { judges: seated };
  }
  // Everybody free may sit everywhere in the last round, so it always seats them.
  throw new Error("assignJudges found no seating though every flight has judges enough");
}

function wantedAt({ flight, barred }: Table, judges: readonly JudgeRow[]): number {
  const recorded = judges.filter(({ flights }) => flights.includes(flight)).length;
  const free = judges.filter(({ judge }) => !barred.has(judge)).length;
  return recorded > 0 ? Math.min(Math.max(recorded, FEWEST_JUDGES), free) : Math.min(WANTED, free);
}

function tooFew({ flight, barred }: Table, judges: readonly JudgeRow[]): TooFewJudges {
  const names = judges.map(({ judge }) => judge);
  return { flight, free: names.filter((judge) => !barred.has(judge)), barred: names.filter((judge) => barred.has(judge)) };
}

class Seating {
  readonly #tables: ReadonlyMap<string, Table>;
  readonly #judges: readonly JudgeRow[];
  readonly #most: number;
  readonly #seats = new Map<string, string[]>();

  constructor(tables: readonly Table[], judges: readonly JudgeRow[], most: number) {
    this.#tables = new Map(tables.map((table) => [table.flight, table]));
    this.#judges = judges;
    this.#most = most;
    for (const { flight } of tables) this.#seats.set(flight, judges.filter(({ flights }) => flights.includes(flight)).map(({ judge }) => judge));
  }

  seat(wanted: ReadonlyMap<string, number>): ReadonlyMap<string, readonly string[]> | undefined {
    for (const [flight, count] of wanted) {
      while ((this.#seats.get(flight) ?? []).length < count) if (!this.#fill(flight, new Set())) return undefined;
    }
    return this.#seats;
  }

  /** Finds one more judge for a flight, moving others along if need be. */
  #fill(flight: string, asked: Set<string>): boolean {
    const seats = this.#seats.get(flight) ?? [];
    for (const judge of this.#judges) {
      if (asked.has(judge.judge) || seats.includes(judge.judge) || this.#tables.get(flight)?.barred.has(judge.judge) === true) continue;
      asked.add(judge.judge);
      if (this.#load(judge.judge) >= this.#most && !this.#release(judge, asked)) continue;
      seats.push(judge.judge);
      return true;
    }
    return false;
  }

  /** Frees a judge from one of the tables that judges.csv doesn't record, by finding another for it. */
  #release({ judge, flights }: JudgeRow, asked: Set<string>): boolean {
    for (const [other, seats] of this.#seats) {
      if (!seats.includes(judge) || flights.includes(other) || !this.#fill(other, asked)) continue;
      seats.splice(seats.indexOf(judge), 1);
      return true;
    }
    return false;
  }

  #load(judge: string): number {
    return [...this.#seats.values()].filter((seats) => seats.includes(judge)).length;
  }
}
