/** A quantity that changes along a length: pairs of place and value, places rising. */
export type Profile = readonly (readonly [at: number, value: number])[];

/** The profile's value at a place, on a smooth line without overshoot (eased between stations); its ends are held. */
export function valueAt(profile: Profile, at: number): number {
  let before = profile[0];
  if (before === undefined) return 0;
  if (at <= before[0]) return before[1];
  for (const station of profile) {
    if (at <= station[0] && station[0] > before[0]) return hermite(profile, before, station, at);
    before = station;
  }
  return before[1];
}

/** The mean slope around a station; 0 where the profile turns, so that it never overshoots (Fritsch and Carlson). */
function slopeAt(profile: Profile, index: number): number {
  const [before, here, after] = [profile[index - 1], profile[index], profile[index + 1]];
  if (here === undefined) return 0;
  const left = before === undefined ? undefined : (here[1] - before[1]) / (here[0] - before[0]);
  const right = after === undefined ? undefined : (after[1] - here[1]) / (after[0] - here[0]);
  if (left === undefined) return right ?? 0;
  if (right === undefined) return left;
  return left * right <= 0 ? 0 : (2 * left * right) / (left + right);
}

function hermite(profile: Profile, a: readonly [number, number], b: readonly [number, number], at: number): number {
  const index = profile.indexOf(a);
  const span = b[0] - a[0];
  const t = (at - a[0]) / span;
  const m0 = slopeAt(profile, index) * span;
  const m1 = slopeAt(profile, index + 1) * span;
  return (
    a[1] * (1 + 2 * t) * (1 - t) * (1 - t) +
    m0 * t * (1 - t) * (1 - t) +
    b[1] * t * t * (3 - 2 * t) +
    m1 * t * t * (t - 1)
  );
}

/** A profile's values from a fine table (every 0.05 mm), for places that are asked for at every voxel. */
export function tableOf(profile: Profile): (at: number) => number {
  const step = 0.05;
  const from = profile[0]?.[0] ?? 0;
  const to = profile[profile.length - 1]?.[0] ?? 0;
  const values = new Float64Array(Math.ceil((to - from) / step) + 2).map((_, i) => valueAt(profile, from + i * step));
  return (at) => {
    const place = Math.min(values.length - 1.001, Math.max(0, (at - from) / step));
    const index = Math.floor(place);
    const a = values[index] as number;
    return a + ((values[index + 1] as number) - a) * (place - index);
  };
}
