/** A ratio in two figures, never rounded onto 1: `0.14`, `1.4`, `12`, `340`, `1,200`. */
export function ratioFigure(ratio: number): string {
  if (ratio === 0) return "0";
  const rounded = Number(ratio.toPrecision(2));
  if (rounded === 1 && ratio !== 1) return ratio < 1 ? "just under 1" : "just over 1";
  const text = rounded < 1e-4 ? rounded.toExponential().replace("e-", " x 10^-") : String(rounded);
  return text.replace(/\B(?=(\d{3})+$)/g, rounded >= 1_000 ? "," : "");
}

/** How a value stands to what it is held against, by how much: `1.4 times`, `7.1 times below`, `just below`. */
export function timesText(ratio: number): string {
  if (ratio === 0) return "nothing of";
  if (ratio === 1) return "at";
  const figure = ratioFigure(ratio > 1 ? ratio : 1 / ratio);
  if (figure.startsWith("just")) return ratio > 1 ? "just above" : "just below";
  return ratio > 1 ? `${figure} times` : `${figure} times below`;
}
