/** What a key does in a place of a probing: a depth or none that is written, or ten that waits for its second digit. */
export type DepthKey = { readonly writes: number | undefined } | { readonly waits: "ten" };

/** See {@link DepthKey}; undefined for a key that means nothing here. A digit is the depth; + comes before the second digit of ten and more. */
export function depthOfKey(key: string, afterTen: boolean): DepthKey | undefined {
  if (/^\d$/.test(key)) return { writes: Number(key) + (afterTen ? 10 : 0) };
  if (key === "+") return { waits: "ten" };
  return ["-", "x", "X"].includes(key) ? { writes: undefined } : undefined;
}

const steps: Readonly<Record<string, readonly [along: number, across: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The place that an arrow leads to among two rows of three; undefined where it leads out of them. */
export function placeOfArrow(key: string, from: number): number | undefined {
  const [along, across] = steps[key] ?? [0, 0];
  const [column, row] = [(from % 3) + along, Math.floor(from / 3) + across];
  const stays = along === 0 && across === 0;
  return stays || column < 0 || column > 2 || row < 0 || row > 1 ? undefined : row * 3 + column;
}
