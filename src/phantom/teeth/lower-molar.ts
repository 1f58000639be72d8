import type { CanalShape } from "../anatomy/canal.ts";
import type { RootShape } from "../anatomy/root.ts";
import type { ToothShape } from "../anatomy/tooth.ts";
import { toothPoint as at } from "../tooth-point.ts";

const mesialRoot: RootShape = {
  name: "M",
  axis: [at(-2.5, 0.1, 0.6), at(-3.4, 0.2, 4), at(-3.9, 0.3, 7.4), at(-3.7, 0.3, 10.4), at(-2.6, 0.2, 13.9)],
  halfMesiodistal: [
    [0, 1.9],
    [0.3, 1.75],
    [0.7, 1.3],
    [0.9, 0.9],
    [1, 0.55],
  ],
  halfBuccolingual: [
    [0, 3.6],
    [0.3, 3.7],
    [0.7, 2.8],
    [0.9, 1.8],
    [1, 1],
  ],
};
const distalRoot: RootShape = {
  name: "D",
  axis: [at(2.5, 0.5, 0.6), at(3.5, 0.6, 4), at(4.2, 0.7, 8), at(4.4, 0.6, 10.8), at(4.1, 0.5, 12.9)],
  halfMesiodistal: [
    [0, 1.9],
    [0.3, 1.7],
    [0.7, 1.35],
    [0.9, 1],
    [1, 0.6],
  ],
  halfBuccolingual: [
    [0, 3],
    [0.3, 2.9],
    [0.7, 2.1],
    [0.9, 1.4],
    [1, 0.8],
  ],
};
/** The third root: slender, on the lingual side, and it turns sharply to buccal near its end. */
const distolingualRoot: RootShape = {
  name: "DL",
  axis: [
    at(2.2, -2.4, 0.6),
    at(2.9, -3.9, 3.6),
    at(3.3, -5.1, 6.4),
    at(3.5, -5.5, 8.2),
    at(3.6, -5, 9.8),
    at(3.7, -3.5, 11.4),
  ],
  halfMesiodistal: [
    [0, 1.5],
    [0.3, 1.4],
    [0.7, 1.15],
    [0.9, 0.7],
    [1, 0.45],
  ],
  halfBuccolingual: [
    [0, 1.6],
    [0.3, 1.45],
    [0.7, 1.15],
    [0.9, 0.7],
    [1, 0.45],
  ],
};

const canals: readonly CanalShape[] = [
  {
    name: "MB",
    root: "M",
    orificeAt: 0.03,
    foramenShortMm: 0.4,
    toBuccal: [
      [0, 1.5],
      [0.3, 1.75],
      [0.75, 1.1],
      [1, 0.35],
    ],
    radiusMm: [
      [0, 0.34],
      [0.3, 0.26],
      [0.85, 0.16],
      [0.96, 0.1],
      [1, 0.14],
    ],
  },
  {
    name: "ML",
    root: "M",
    orificeAt: 0.03,
    foramenShortMm: 0.55,
    toBuccal: [
      [0, -1.5],
      [0.3, -1.65],
      [0.75, -1.05],
      [1, -0.35],
    ],
    toDistal: [
      [0, 0.1],
      [0.5, 0.15],
      [1, 0.05],
    ],
    radiusMm: [
      [0, 0.34],
      [0.3, 0.26],
      [0.85, 0.16],
      [0.96, 0.1],
      [1, 0.14],
    ],
  },
  {
    name: "D",
    root: "D",
    orificeAt: 0.03,
    foramenShortMm: 0.5,
    radiusMm: [
      [0, 0.46],
      [0.3, 0.34],
      [0.85, 0.18],
      [0.96, 0.12],
      [1, 0.17],
    ],
    ovalness: [
      [0, 2.2],
      [0.5, 1.9],
      [0.9, 1],
    ],
  },
  {
    name: "DL",
    root: "DL",
    orificeAt: 0.03,
    foramenShortMm: 0.35,
    radiusMm: [
      [0, 0.3],
      [0.3, 0.2],
      [0.85, 0.13],
      [0.96, 0.09],
      [1, 0.12],
    ],
  },
];

/**
 * A lower first molar with two roots. Crown 11.2 mm wide and 7.5 mm high, roots about 13 to 14 mm.
 * @source W. M. Wheeler's table of average sizes, as every textbook of dental anatomy gives it (memory); courses are invented.
 */
export const lowerFirstMolar: ToothShape = {
  kind: "lower molar",
  crown: {
    halfMesiodistal: [
      [-7.6, 4.4],
      [-6.2, 5.1],
      [-4.6, 5.6],
      [-2.6, 5.15],
      [-0.6, 4.6],
      [0.6, 4.5],
      [2, 4.4],
      [4, 4],
    ],
    buccal: [
      [-7.6, 2.6],
      [-5.6, 3.9],
      [-2, 5.1],
      [0, 4.6],
      [2, 4.3],
      [4, 4.3],
    ],
    lingual: [
      [-7.6, -3.5],
      [-5.2, -4.8],
      [-3.6, -5.1],
      [0, -4.4],
      [2, -4.1],
      [4, -4.1],
    ],
    squareness: 2.9,
    cusps: [
      { x: -2.9, y: 2.6, heightMm: 7.1 },
      { x: 0.9, y: 2.9, heightMm: 6.9 },
      { x: 3.7, y: 1.7, heightMm: 6.4 },
      { x: -2.6, y: -2.9, heightMm: 7.5 },
      { x: 2.4, y: -2.9, heightMm: 7.2 },
    ],
    cuspSlope: 0.62,
    cuspRoundingMm: 1.7,
    trunkEndZ: 3.1,
    trunkEndsEarlierMm: { atSides: -0.6, atFaces: -0.3 },
    enamelAtSideMm: 1.35,
    enamelAtCuspMm: 2.1,
    junctionRiseMm: 0.8,
  },
  roots: [mesialRoot, distalRoot],
  canals: canals.filter((canal) => canal.root !== "DL"),
  chamber: {
    halfMesiodistal: 2.5,
    halfBuccolingual: 1.45,
    middle: { x: -0.2, y: 0 },
    roofZ: -1.2,
    floorZ: 1.4,
    hornMm: 1.7,
  },
  filletMm: 1.2,
};

/** The same with a third root on the lingual side of the distal one (radix entomolaris). */
export const lowerFirstMolarWithThirdRoot: ToothShape = {
  ...lowerFirstMolar,
  roots: [mesialRoot, distalRoot, distolingualRoot],
  canals,
};

/** A lower second molar: smaller, its roots closer together and leaning to distal. */
export const lowerSecondMolar: ToothShape = {
  ...lowerFirstMolar,
  crown: {
    ...lowerFirstMolar.crown,
    halfMesiodistal: [
      [-7.2, 4.1],
      [-5.8, 4.8],
      [-4.2, 5.25],
      [-2.4, 4.9],
      [-0.6, 4.4],
      [0.6, 4.3],
      [2, 4.2],
      [4.5, 3.8],
    ],
    cusps: [
      { x: -2.6, y: 2.6, heightMm: 6.8 },
      { x: 2.4, y: 2.5, heightMm: 6.6 },
      { x: -2.4, y: -2.7, heightMm: 7.1 },
      { x: 2.4, y: -2.7, heightMm: 6.8 },
    ],
    trunkEndZ: 3.8,
  },
  roots: [
    {
      ...mesialRoot,
      axis: [at(-2.3, 0.1, 0.6), at(-2.6, 0.2, 4), at(-2.5, 0.3, 7.4), at(-1.8, 0.3, 10), at(-0.6, 0.2, 12.6)],
    },
    { ...distalRoot, axis: [at(2.3, 0.3, 0.6), at(2.7, 0.3, 4), at(3, 0.3, 7.6), at(3.4, 0.2, 10), at(4, 0.1, 12.1)] },
  ],
};
