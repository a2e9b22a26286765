import { create } from "qrcode";

/** Modules of white that a reader needs around the code (ISO/IEC 18004: four; published). */
const QUIET = 4;

/** A QR code as one SVG path, a unit a module, its quiet zone included. */
export function qrPath(text: string): { readonly path: string; readonly size: number } {
  const { modules: { size, data } } = create(text, { errorCorrectionLevel: "M" });
  const dark = Array.from(data).flatMap((module, index) => (module === 0 ? [] : [`M${QUIET + (index % size)} ${QUIET + Math.floor(index / size)}h1v1h-1z`]));
  return { path: dark.join(""), size: size + 2 * QUIET };
}
