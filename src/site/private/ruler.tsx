const LENGTH_MM = 100;

/** A hundred millimetres to hold a ruler against: a printer that fits pages to its paper shrinks everything. */
export function Ruler() {
  const ticks = Array.from({ length: LENGTH_MM + 1 }, (_, mm) => `M${mm} 0v${mm % 10 === 0 ? 5 : mm % 5 === 0 ? 3.5 : 2}`).join("");
  return (
    <div class="ruler keep">
      <svg viewBox={`-0.25 -0.25 ${LENGTH_MM + 0.5} 5.5`} style={`width:${LENGTH_MM + 0.5}mm;height:5.5mm`} role="img" aria-label="A ruler of 100 millimetres">
        <path d={`M0 0h${LENGTH_MM}${ticks}`} fill="none" stroke="#000" stroke-width="0.2" />
      </svg>
      <p class="small">This line is 100 mm long. If it isn’t on your paper, print again at 100 %, without fitting to the page.</p>
    </div>
  );
}
