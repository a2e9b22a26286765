import type { DisplayUnit } from "./display-unit.js";

/** A batch's figure in the unit that is drawn. */
export interface SeasonValue {
  readonly batch: string;
  readonly value: number;
  readonly plusMinus: number;
  /** "4.2 ± 0.3" */
  readonly text: string;
}

/** A season's figure, ready to be placed. */
export interface SeasonDrawing {
  readonly title: string;
  readonly unit: DisplayUnit;
  readonly fromZero: boolean;
  readonly values: readonly SeasonValue[];
}
