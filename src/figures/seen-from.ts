/** A place in a tooth's own axes, mm: [to distal, to buccal, to the apex]. */
export type ToothPlace = readonly [toDistal: number, toBuccal: number, toApex: number];

/** Where a course is looked at from: as a tube stands, 0 and 0 straight on from the buccal side. */
export interface Pose {
  /** Above 0 from mesial, below 0 from distal; 90 is from mesial alone. */
  readonly yawDeg: number;
  /** Above 0 from the apex, below 0 from the crown. */
  readonly pitchDeg: number;
}

/** A place as it is seen: across (to distal where the pose is straight on), down (to the apex), and toward the eye. */
export interface SeenPlace {
  readonly across: number;
  readonly down: number;
  readonly toward: number;
}

/**
 * A place as a pose shows it, in parallel rays and true size: a pose of a tube's two angles shows what its film shows.
 * The frame is turned, never mirrored; which side is right is up to who draws.
 */
export function seenFrom({ yawDeg, pitchDeg }: Pose, [x, y, z]: ToothPlace): SeenPlace {
  const [a, b] = [(yawDeg * Math.PI) / 180, (pitchDeg * Math.PI) / 180];
  const across = x * Math.cos(a) + y * Math.sin(a);
  const level = y * Math.cos(a) - x * Math.sin(a);
  return {
    across,
    down: z * Math.cos(b) - level * Math.sin(b),
    toward: level * Math.cos(b) + z * Math.sin(b),
  };
}

/** One place as counted from another. */
export const less = ([a, b, c]: ToothPlace, [x, y, z]: ToothPlace): ToothPlace => [a - x, b - y, c - z];

/** The pose after a turn, within what has a name: once round to each side, from the crown to the apex. */
export function turnedPose({ yawDeg, pitchDeg }: Pose, by: Pose): Pose {
  const round = (yawDeg + by.yawDeg) % 360;
  return {
    yawDeg: round > 180 ? round - 360 : round <= -180 ? round + 360 : round,
    pitchDeg: Math.min(90, Math.max(-90, pitchDeg + by.pitchDeg)),
  };
}

/** A pose in words: `straight on from buccal`, `from 25° mesial of buccal, 10° from the apex`. */
export function poseWords({ yawDeg, pitchDeg }: Pose): string {
  if (Math.abs(pitchDeg) >= 89.5) return pitchDeg > 0 ? "from the apex" : "from the crown";
  const tilt =
    Math.abs(pitchDeg) < 0.5
      ? ""
      : `, tipped ${Math.abs(pitchDeg).toFixed(0)}° to the ${pitchDeg > 0 ? "apex" : "crown"}`;
  return `${aroundWords(yawDeg)}${tilt}`;
}

function aroundWords(yawDeg: number): string {
  const size = Math.abs(yawDeg);
  const side = yawDeg > 0 ? "mesial" : "distal";
  if (size < 0.5) return "from buccal";
  if (Math.abs(size - 90) < 0.5) return `from ${side}`;
  if (size > 179.5) return "from lingual";
  return size < 90
    ? `from ${size.toFixed(0)}° ${side} of buccal`
    : `from ${(180 - size).toFixed(0)}° ${side} of lingual`;
}
