export { batchSchema, type Batch, type PartialBatch } from "./batch.js";
export { clubSchema, type Club } from "./club.js";
export { competitionSchema, type Competition } from "./competition.js";
export { equipmentSchema, type Equipment } from "./equipment.js";
export { hopsSchema, maltsSchema, stylesSchema, type HopDefaults, type MaltDefaults, type StyleTargets } from "./targets.js";
export type { FieldAbout, QuantityRange, Refusal } from "./kinds/index.js";
