/** Every sign that says something by itself, with its one meaning; the style sheets use the same. */
export const signs = {
  heatOn: '▲',
  heatEased: '◆',
  heatOff: '▼',
  receiverChanged: 'R',
  note: '✎',
  mark: '•',
  stage: '▬',
  prompt: '!',
  /** Wrong, broken, lost. */
  problem: '✕',
  done: '✓',
  toDo: '○',
  saved: '●',
} as const;

/** What tells one line from another in a drawing; none of the above. */
export const traceSigns = ['■', '★', '✚', '◐'] as const;
