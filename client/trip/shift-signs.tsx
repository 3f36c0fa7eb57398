/** Signs of rich and lean, drawn: a printer leaves backgrounds out. */

/** The patterns of the signs, once on the page that shows any. */
export function ShiftPatterns() {
  return (
    <defs>
      <pattern id="trip-rich" width="6" height="6" patternUnits="userSpaceOnUse">
        <path class="hatch" d="M-1 7 7 -1M-1 1 1 -1M5 7 7 5" />
      </pattern>
      <pattern id="trip-lean" width="6" height="6" patternUnits="userSpaceOnUse">
        <circle class="dots" cx="3" cy="3" r="1.3" />
      </pattern>
    </defs>
  );
}

/** The same pattern as the bars have, beside words. */
export function ShiftSwatch({ side }: { side: "rich" | "lean" }) {
  return (
    <svg class="swatch" viewBox="0 0 14 14" aria-hidden="true">
      <rect class={`bar ${side}`} x="0.5" y="0.5" width="13" height="13" />
    </svg>
  );
}
