// The day of a competition, decided before anyone pours. Never published.

export interface DayEntry {
  /** Registration id, on the bottle. */
  readonly entry: string;
  /** Blind code, on the cup and the score sheet. */
  readonly code: string;
  readonly flight: string;
  readonly style?: string;
  readonly brewer?: string;
  readonly title?: string;
  readonly batch?: string;
  readonly declared: readonly string[];
  readonly allergens: readonly string[];
}

export interface DayFlight {
  readonly flight: string;
  /** For file names. */
  readonly slug: string;
  /** In the order in which they are pulled and poured. */
  readonly entries: readonly DayEntry[];
  /** By code. Nobody in it has an own entry in the flight. */
  readonly judges: readonly string[];
}

/** What one judge is asked to taste. */
export interface DayJudge {
  readonly judge: string;
  readonly flights: readonly string[];
  readonly entries: number;
  /** At the usual pour, if all of it were swallowed. */
  readonly millilitres: number;
  readonly alcoholG: number;
  /** Registration ids of their own entries: none of them may come before them, in best of show either. */
  readonly own: readonly string[];
}

export interface CompetitionDay {
  readonly name: string;
  readonly slug: string;
  readonly date: string;
  readonly sheet: readonly { readonly section: string; readonly maximum: number }[];
  readonly maximum: number;
  readonly agreeWithin: number;
  readonly places: number;
  /** In order of registration. */
  readonly entries: readonly DayEntry[];
  readonly flights: readonly DayFlight[];
  readonly judges: readonly DayJudge[];
  /** What the steward and the registrar must know; whole sentences. */
  readonly notes: readonly string[];
  /** entries.csv and judges.csv with what was drawn, to be copied into the log. */
  readonly files: readonly { readonly name: string; readonly text: string }[];
  /** Entries that go on to best of show, by code, where agreed scores are recorded. */
  readonly finalists: readonly string[];
}

/** A bottle's slip. Nothing on it says whose it is. */
export interface SlipReport {
  readonly entry: string;
  readonly competition: string;
  readonly style?: string;
  /** What its QR code says. */
  readonly scans: string;
}
