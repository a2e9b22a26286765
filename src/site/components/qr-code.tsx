import { create } from "qrcode";

/** Light modules around the code, without which it isn't found (ISO/IEC 18004, 6.3.8). */
const QUIET = 4;

/** An address as a QR code, drawn as one path; the address itself stands beside it in words. */
export function QrCode({ address }: { readonly address: string }) {
  const { modules } = create(address, { errorCorrectionLevel: "M" });
  const side = modules.size + 2 * QUIET;
  const dark = Array.from({ length: modules.size }, (_row, y) =>
    Array.from({ length: modules.size }, (_column, x) => (modules.get(y, x) === 1 ? `M${x + QUIET} ${y + QUIET}h1v1h-1z` : "")).join("")).join("");
  return (
    <svg class="qr" viewBox={`0 0 ${side} ${side}`} width={side * 3} height={side * 3} role="img" aria-label={`QR code: ${address}`} shape-rendering="crispEdges">
      <rect width={side} height={side} fill="#fff" />
      <path d={dark} fill="#000" />
    </svg>
  );
}
