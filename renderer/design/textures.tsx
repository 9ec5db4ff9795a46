/** The textures of stages, band and gaps, once for the whole window; shapes refer to them by id. */
export function Textures() {
  return (
    <svg className="unseen" aria-hidden="true" focusable="false">
      <defs>
        <pattern id="texture-dots" width="10" height="10" patternUnits="userSpaceOnUse">
          <circle cx="2.5" cy="2.5" r="1.4" className="texture-fill" />
          <circle cx="7.5" cy="7.5" r="1.4" className="texture-fill" />
        </pattern>
        <pattern id="texture-strokes" width="9" height="9" patternUnits="userSpaceOnUse">
          <path d="M-1 10 L10 -1 M-1 1 L1 -1 M8 10 L10 8" className="texture-line" />
        </pattern>
        <pattern id="texture-plain" width="14" height="14" patternUnits="userSpaceOnUse">
          <path d="M0 13.25 H14" className="texture-line" />
        </pattern>
        <pattern id="texture-waves" width="16" height="9" patternUnits="userSpaceOnUse">
          <path d="M0 5 Q4 1 8 5 T16 5" className="texture-line" fill="none" />
        </pattern>
        <pattern id="texture-grid" width="11" height="11" patternUnits="userSpaceOnUse">
          <path d="M0 5.5 H11 M5.5 0 V11" className="texture-line" />
        </pattern>
        <pattern id="texture-band" width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" className="band-wash" />
          <path d="M-1 1 L1 -1 M-1 9 L9 -1 M7 9 L9 7" className="band-line" />
        </pattern>
        <pattern id="texture-gap" width="7" height="7" patternUnits="userSpaceOnUse">
          <path d="M0 0 L7 7 M7 0 L0 7" className="gap-line" />
        </pattern>
      </defs>
    </svg>
  );
}
