/** What was written for depths means: numbers in mm, a dash for a place that was not taken. */
export interface ReadDepths {
  readonly depths?: readonly (number | undefined)[];
  readonly fault?: string;
}

/** See {@link ReadDepths}: one depth, or several in a row as `3 2 3 / 3 - 4`. */
export function readDepths(text: string): ReadDepths {
  const written = text.replace(/[/|;]/g, " ").replaceAll(",", ".").trim();
  const parts = written === "" ? [] : written.split(/\s+/);
  const odd = parts.find((part) => !/^([-–]|\d+(\.\d+)?)$/.test(part));
  if (odd !== undefined) return { fault: `“${odd}” is not a depth in mm` };
  return { depths: parts.map((part) => (/^\d/.test(part) ? Number(part) : undefined)) };
}
