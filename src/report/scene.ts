import { atmosphericPressure, type Band, type HoursWithin, type TimeWindow } from "../science/index.js";
import { civilAt, instantMs, type Batch, type BatchRecord, type CivilTime, type Equipment, type Log } from "../records/index.js";
import type { Quantity } from "../units/index.js";
import type { GristLine, PackageEntry, Transfer } from "./batch-parts.js";
import { gravityPointsOfLog, lastGravityBefore, type GravityPoint } from "./gravity-points.js";
import { hopValue, maltValues, type MaltValues } from "./ingredients.js";
import { instrumentsOf, type Instruments } from "./instruments.js";
import { apply, assumed, missing, readingOf, type Known, type Missing, type Result } from "./known.js";
import { columnsOf, type LogColumns } from "./log-series.js";
import { hoursInBand, overTemperature, type Probe, type ProbeShare, type SeriesRelation } from "./over-log.js";
import { latestHour, momentReading, momentsFrom, type Moment } from "./moments.js";
import { gravityReading, massReading, statedReading, volumeReading } from "./readings.js";

/** How a figure comes from a scene; the list of figures is handed in, since figures are made from scenes. */
export type ComputeFigure = (id: string, scene: Scene) => Result;

/**
 * One batch with everything its figures are taken from, read once: its record,
 * instruments and log on one axis of hours since pitching.
 */
export class Scene {
  readonly batch: Batch;
  readonly equipment: Equipment | undefined;
  readonly instruments: Instruments;
  readonly asOfHour: number;
  readonly #place: (field: string, civil: CivilTime) => Moment;
  readonly #start: CivilTime;
  readonly #figures = new Map<string, Result>();
  readonly #kept = new Map<string, unknown>();

  constructor(readonly record: BatchRecord, readonly log: Log, asOf: CivilTime, private readonly computeFigure: ComputeFigure) {
    this.batch = record.data;
    this.equipment = this.batch.equipment === undefined ? undefined : log.equipment.get(this.batch.equipment);
    this.instruments = instrumentsOf(this.equipment);
    this.#start = this.batch.yeast?.pitched ?? this.batch.brewed;
    this.#place = momentsFrom(this.#start, log.club.zone);
    this.asOfHour = this.#place("as of", asOf).hour;
  }

  /** A figure by id, computed once; carries its id on to whatever is computed from it. */
  figure(id: string): Result {
    const known = this.#figures.get(id);
    if (known !== undefined) return known;
    const result = this.computeFigure(id, this);
    this.#figures.set(id, result);
    return result;
  }

  /** Lets go of every step of every figure and of the log row by row: a club's batches together would keep them all. What is asked for again is computed again. */
  forget(): void {
    this.#figures.clear();
    this.#kept.clear();
  }

  // Readings of the record, each brought to the unit figures use.

  volume(field: string, volume: Quantity<"volume"> | undefined): Result {
    return volumeReading(this.instruments, field, volume);
  }

  mass(field: string, mass: Quantity<"mass"> | undefined): Result {
    return massReading(this.instruments, field, mass);
  }

  stated(field: string, quantity: Quantity | undefined, unit: string): Result {
    return statedReading(field, quantity, unit);
  }

  temperature(field: string, temperature: Quantity<"temperature"> | undefined): Result {
    if (temperature === undefined) return missing(`${field} isn't recorded`);
    return readingOf(field, temperature.value, "C", temperature.limit ?? this.instruments.thermometerC, temperature.text);
  }

  /** A gravity of wort. */
  gravity(field: string, gravity: Quantity<"gravity"> | undefined): Result {
    return gravityReading(this.instruments, field, gravity);
  }

  malt(line: GristLine, index: number): MaltValues {
    return maltValues(this.log, line, index);
  }

  hopAlpha(hop: string | undefined, alpha: Quantity | undefined, field: string): Result {
    return hopValue(this.log, hop, "alpha", alpha, field);
  }

  // Time.

  get startText(): string {
    return this.#start.text;
  }

  /** Hour 0: pitching, or the brew date where no pitching time is recorded. */
  get start(): Moment {
    return this.#place(this.batch.yeast?.pitched === undefined ? "brewed" : "yeast.pitched", this.#start);
  }

  get startHour(): Known {
    return momentReading(this.start);
  }

  moment(field: string, civil: CivilTime | undefined): Moment | undefined {
    return civil === undefined ? undefined : this.#place(field, civil);
  }

  civilAtHour(hour: number): string {
    // A line between two readings may be crossed between two milliseconds.
    return civilAt(Math.round(instantMs(this.#start, this.log.club.zone) + hour * 3_600_000), this.log.club.zone).text;
  }

  get firstDryHop(): Moment | undefined {
    return this.#earliest((this.batch.dryHops ?? []).map((hop, index) => this.moment(`dry_hops[${index}].added`, hop.added)));
  }

  get crashStart(): Moment | undefined {
    return this.moment("crash.from", this.batch.crash?.from);
  }

  /** Beer was moved out of the fermenter; an empty list says that none was. */
  get isMoved(): boolean {
    return this.moves.length > 0;
  }

  /** The first move out of the fermenter. */
  get transferMoment(): Moment | undefined {
    return this.#earliest(this.#moves);
  }

  /** The first move that is not before another moment: beer moved earlier never touched what went in then. */
  transferAfter(moment: Moment | undefined): Moment | undefined {
    return this.#earliest(this.#moves.filter((move) => moment === undefined || (move !== undefined && latestHour(move) >= moment.hour)));
  }

  get #moves(): readonly (Moment | undefined)[] {
    return this.moves.map(({ entry, field }) => this.moment(`${field}.at`, entry.at));
  }

  get packagedMoment(): Moment | undefined {
    return this.#earliest(this.packages.map(({ entry, field }) => this.moment(`${field}.date`, entry.date)));
  }

  /** The batch still has steps to come. */
  get isOpen(): boolean {
    return this.status !== "packaged" && this.status !== "dumped";
  }

  /** As the record says, else the furthest step it records. */
  get status(): string {
    const { batch } = this;
    if (batch.status !== undefined) return batch.status;
    if (this.packages.length > 0) return "packaged";
    if (this.isMoved || batch.crash !== undefined) return "conditioning";
    if (batch.yeast?.pitched !== undefined || batch.fermenter !== undefined) return "fermenting";
    if (batch.boil !== undefined) return "brewing";
    return this.start.hour <= this.asOfHour ? "brewing" : "planned";
  }

  // The log.

  get columns(): LogColumns {
    return this.#keep("columns", () => columnsOf(this.record.logs, instantMs(this.#start, this.log.club.zone)));
  }

  /** From the first to the last row of each log. */
  get logSpans(): readonly TimeWindow[] {
    const startMs = instantMs(this.#start, this.log.club.zone);
    return this.record.logs.flatMap(({ timesMs }) => {
      const [first, last] = [timesMs[0], timesMs.at(-1)];
      return first === undefined || last === undefined ? [] : [{ fromHours: (first - startMs) / 3_600_000, toHours: (last - startMs) / 3_600_000 }];
    });
  }

  get lastLogHour(): number | undefined {
    return this.columns.temperature?.series.at(-1)?.hours;
  }

  /** A number taken from the temperature log; missing, with the reason, where the log can't give it. */
  overLog<Answer>(relation: SeriesRelation<Answer>, window: TimeWindow | Missing, pick: (answer: Answer) => number, share?: ProbeShare): Result {
    return overTemperature(this.#probe, relation, window, pick, share);
  }

  /** Hours that the log spent within, below or above a band of temperature. */
  hoursInBand(window: TimeWindow | Missing, band: Band, pick: (hours: HoursWithin) => number): Result {
    return hoursInBand(this.#probe, window, band, pick);
  }

  get #probe(): Probe {
    return { column: this.columns.temperature, limitC: this.instruments.thermometerC, civilAt: (hour) => this.civilAtHour(hour) };
  }

  /** Pitching to the first dry hop, else the crash, else the transfer, else the end of the log. */
  get fermentationWindow(): TimeWindow | Missing {
    const until = (this.firstDryHop ?? this.crashStart ?? this.transferMoment)?.hour ?? this.lastLogHour;
    return until === undefined ? missing("fermentation.log isn't recorded") : { fromHours: 0, toHours: until };
  }

  /** Start of cooling to the transfer, or to the end of the log while the beer is still cold. */
  get crashWindow(): TimeWindow | Missing {
    if (this.crashStart === undefined) return missing("crash.from isn't recorded");
    const until = this.transferMoment?.hour ?? (this.isOpen ? this.lastLogHour : undefined);
    if (until === undefined) return missing("transfer.at isn't recorded");
    if (until <= this.crashStart.hour) return missing("the transfer isn't after crash.from");
    return { fromHours: this.crashStart.hour, toHours: until };
  }

  get handTemperatures(): readonly { readonly hour: number; readonly temperature: Result }[] {
    return (this.batch.fermentation?.readings ?? []).flatMap((reading, index) => {
      const moment = this.moment(`fermentation.readings[${index}].at`, reading.at);
      if (moment === undefined || reading.temperature === undefined) return [];
      return [{ hour: moment.hour, temperature: this.temperature(`fermentation.readings[${index}].temperature`, reading.temperature) }];
    });
  }

  /** Every gravity of the fermenting beer, hand and probe, in order of time. */
  get gravityPoints(): readonly GravityPoint[] {
    return this.#keep("gravityPoints", () => {
      const logged = this.columns.gravity === undefined ? []
        : gravityPointsOfLog(this.columns.gravity, this.instruments.hydrometerSg, (hour) => this.civilAtHour(hour));
      return [...this.#handGravities(), ...logged].sort((a, b) => a.hour - b.hour);
    });
  }

  lastGravityBefore(hour: number): GravityPoint | undefined {
    return lastGravityBefore(this.gravityPoints, hour);
  }

  // Beer and vessels.

  /** Moves out of the fermenter, each with its field as the record writes it. */
  get moves(): readonly { readonly entry: Transfer; readonly field: string }[] {
    return (this.batch.transfer ?? []).map((entry, index, all) => ({ entry, field: all.length === 1 ? "transfer" : `transfer[${index}]` }));
  }

  get packages(): readonly { readonly entry: PackageEntry; readonly field: string }[] {
    return (this.batch.package ?? []).map((entry, index, all) => ({ entry, field: all.length === 1 ? "package" : `package[${index}]` }));
  }

  packageVolume(entry: PackageEntry, field: string): Result {
    return this.volume(`${field}.volume`, entry.volume);
  }

  get fermenterVolume(): Result {
    return this.volume("fermenter.volume", this.batch.fermenter?.volume);
  }

  get afterBoilVolume(): Result {
    return this.volume("boil.after.volume", this.batch.boil?.after?.volume);
  }

  /** Air pressure at the club's height. */
  get atmosphericPressure(): Result {
    const { altitude } = this.log.club;
    return apply(atmosphericPressure, altitude === undefined
      ? assumed("altitude", 0, "m", "The club's altitude isn't recorded: sea level is taken.")
      : readingOf("club.altitude", altitude.value, "m", altitude.limit, altitude.text));
  }

  #handGravities(): GravityPoint[] {
    return (this.batch.fermentation?.readings ?? []).flatMap((reading, index) => {
      const field = `fermentation.readings[${index}].gravity`;
      const moment = this.moment(`fermentation.readings[${index}].at`, reading.at);
      if (moment === undefined || reading.gravity === undefined) return [];
      const gravity = gravityReading(this.instruments, field, reading.gravity, () => this.figure("original-gravity"));
      return [{ ...moment, field, gravity, source: "hand" as const }];
    });
  }

  #earliest(moments: readonly (Moment | undefined)[]): Moment | undefined {
    return moments.filter((moment) => moment !== undefined).sort((a, b) => a.hour - b.hour)[0];
  }

  #keep<T>(name: string, make: () => T): T {
    if (!this.#kept.has(name)) this.#kept.set(name, make());
    return this.#kept.get(name) as T;
  }
}
