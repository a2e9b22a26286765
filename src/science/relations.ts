/** Every relation of the project, one line each. A new one is a file and a line here. */

// Gravity
export { gravityDrop } from "./gravity-drop.js";
export { gravityFromPlato } from "./gravity-from-plato.js";
export { hydrometerCorrection } from "./hydrometer-correction.js";
export { platoFromGravity } from "./plato-from-gravity.js";
export { refractometerFinalGravity } from "./refractometer-final-gravity.js";
export { refractometerWort } from "./refractometer-wort.js";
export { volumeAt20 } from "./volume-at-20.js";
export { waterDensity } from "./water-density.js";

// Brewhouse
export { boilOff } from "./boil-off.js";
export { efficiency } from "./efficiency.js";
export { extractMass } from "./extract-mass.js";
export { gravityFromExtract } from "./gravity-from-extract.js";
export { potentialExtract } from "./potential-extract.js";
export { residualAlkalinity } from "./residual-alkalinity.js";
export { strikeTemperature } from "./strike-temperature.js";
export { volumeBeforeBoil } from "./volume-before-boil.js";
export { waterNeeded } from "./water-needed.js";

// Alcohol
export { alcoholByVolume } from "./alcohol-by-volume.js";
export { alcoholByWeight } from "./alcohol-by-weight.js";
export { apparentAttenuation } from "./apparent-attenuation.js";
export { energy } from "./energy.js";
export { expectedFinalGravity } from "./expected-final-gravity.js";
export { realAttenuation } from "./real-attenuation.js";
export { realExtract } from "./real-extract.js";

// Bitterness
export { bitternessStand } from "./bitterness-stand.js";
export { bitternessTinseth } from "./bitterness-tinseth.js";
export { isomerisationRate } from "./isomerisation-rate.js";

// Colour
export { beerColor } from "./beer-color.js";
export { beerTransmission } from "./beer-transmission.js";
export { beerTristimulus } from "./beer-tristimulus.js";
export { colorMorey } from "./color-morey.js";
export { maltColorUnits } from "./malt-color-units.js";

// Dry hop
export { beerLostToHops } from "./beer-lost-to-hops.js";
export { dryHopDose } from "./dry-hop-dose.js";
export { dryHopMass } from "./dry-hop-mass.js";
export { dryHopOil } from "./dry-hop-oil.js";
export { dryHopPhRise } from "./dry-hop-ph-rise.js";

// Log
export { elapsedTime } from "./elapsed-time.js";
export { hoursWithin } from "./hours-within.js";
export { seriesExtremes } from "./series-extremes.js";
export { steepestFall } from "./steepest-fall.js";
export { terminalRun } from "./terminal-run.js";
export { timeWeightedMean } from "./time-weighted-mean.js";
export { valueAt } from "./value-at.js";
export { warmestHour } from "./warmest-hour.js";

// Cooling
export { beerViscosity } from "./beer-viscosity.js";
export { co2Solubility } from "./co2-solubility.js";
export { crashAirMost } from "./crash-air-most.js";
export { crashDrawnMost } from "./crash-drawn-most.js";
export { freezingPoint } from "./freezing-point.js";
export { headspaceContraction } from "./headspace-contraction.js";
export { residualCo2 } from "./residual-co2.js";
export { sealedVesselPressure } from "./sealed-vessel-pressure.js";
export { sealedVesselPressureGas } from "./sealed-vessel-pressure-gas.js";
export { settlingVelocity } from "./settling-velocity.js";

// Carbonation
export { atmosphericPressure } from "./atmospheric-pressure.js";
export { carbonationAt } from "./carbonation-at.js";
export { carbonationFromGravityFall } from "./carbonation-from-gravity-fall.js";
export { kegPressure } from "./keg-pressure.js";
export { primingSugar } from "./priming-sugar.js";

// Oxygen
export { oxygenDrawn } from "./oxygen-drawn.js";
export { oxygenSaturation } from "./oxygen-saturation.js";
export { packageOxygen } from "./package-oxygen.js";
export { purgeCycles } from "./purge-cycles.js";
export { purgeLiquid } from "./purge-liquid.js";

// Balance
export { difference } from "./difference.js";
export { directReading } from "./direct-reading.js";
export { total } from "./total.js";
export { volumeDifference } from "./volume-difference.js";
export { volumeShare } from "./volume-share.js";
export { weightedMean } from "./weighted-mean.js";
