/** A column of a data file, as the data package describes it. */
export interface DataColumn<Row> {
  readonly name: string;
  readonly type: "string" | "number" | "date";
  readonly description: string;
  readonly unit?: string;
  readonly value: (row: Row) => string | number | undefined;
}
