/** A column of a data file, as the data package describes it. */
export interface DataColumn<Row> {
  readonly name: string;
  readonly type: "string" | "number" | "date";
  readonly description: string;
  readonly unit?: string;
  /** Columns of the same row that hold the unit, and the method's id, of this one. */
  readonly unitField?: string;
  readonly methodField?: string;
  readonly value: (row: Row) => string | number | undefined;
}
