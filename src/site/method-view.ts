/** A relation as its pages and the working tell it: the descriptor that science keeps beside each function. */
export interface MethodView {
  readonly id: string;
  readonly title: string;
  readonly subject: string;
  readonly says: string;
  readonly inputs: readonly MethodInputView[];
  readonly output: { readonly symbol: string; readonly unit: string };
  readonly formula: string;
  readonly range: string;
  readonly source: string;
  readonly status: string;
  readonly model?: { readonly limit: number; readonly as: "absolute" | "share"; readonly source: string };
  readonly checks: readonly MethodCheckView[];
}

export interface MethodInputView {
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

export interface MethodCheckView {
  readonly given: readonly number[];
  readonly gives: number;
  readonly within: number;
  readonly source: string;
  /** Which part of a result with several parts. */
  readonly part?: string;
}

/** Methods by id. */
export type Methods = ReadonlyMap<string, MethodView>;
