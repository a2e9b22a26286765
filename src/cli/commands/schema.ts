import { batchJsonSchema } from "../../records/index.js";
import type { Call } from "../arguments.js";
import type { Effects, ExitCode } from "../effects.js";

/** `gylebook schema`: the JSON Schema of a batch record. */
export function run(_call: Call, effects: Effects): Promise<ExitCode> {
  effects.print(`${JSON.stringify(batchJsonSchema(), null, 2)}\n`);
  return Promise.resolve(0);
}
