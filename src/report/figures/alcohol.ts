import { alcoholByVolume, alcoholByWeight, apparentAttenuation, energy, realAttenuation, realExtract } from "../../science/index.js";
import { apply } from "../known.js";
import { figure } from "./definition.js";

/** Alcohol, attenuation and energy, each from the original and the final gravity. */
export const alcoholFigures = [
  figure("real-extract", "P", "Real extract", "Extract left in the beer once alcohol is allowed for, % by weight",
    (scene) => apply(realExtract, scene.figure("original-extract"), scene.figure("apparent-extract"))),
  figure("abv", "%", "Alcohol by volume", "Alcohol by volume at 20 °C",
    (scene) => apply(alcoholByVolume, scene.figure("abw"), scene.figure("final-gravity"))),
  figure("abw", "%", "Alcohol by weight", "Alcohol by weight",
    (scene) => apply(alcoholByWeight, scene.figure("original-extract"), scene.figure("real-extract"))),
  figure("apparent-attenuation", "%", "Apparent attenuation", "Part of the extract that seems fermented, alcohol ignored",
    (scene) => apply(apparentAttenuation, scene.figure("original-extract"), scene.figure("apparent-extract"))),
  figure("real-attenuation", "%", "Real attenuation", "Part of the extract that was fermented",
    (scene) => apply(realAttenuation, scene.figure("original-extract"), scene.figure("real-extract"))),
  figure("energy", "kJ/100mL", "Energy", "Energy from alcohol and extract",
    (scene) => apply(energy, scene.figure("abw"), scene.figure("real-extract"), scene.figure("final-gravity"))),
];
