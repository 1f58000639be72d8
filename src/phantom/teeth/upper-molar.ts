import type { CanalShape } from "../anatomy/canal.ts";
import type { RootShape } from "../anatomy/root.ts";
import type { ToothShape } from "../anatomy/tooth.ts";
import { toothPoint as at } from "../tooth-point.ts";

const mesiobuccalRoot: RootShape = {
  name: "MB",
  axis: [at(-2.2, 1.9, 0.6), at(-3.3, 3.1, 4), at(-3.9, 3.8, 7.2), at(-3.7, 3.6, 9.8), at(-2.5, 3.2, 12.7)],
  halfMesiodistal: [
    [0, 1.6],
    [0.35, 1.5],
    [0.7, 1.12],
    [0.9, 0.8],
    [1, 0.52],
  ],
  halfBuccolingual: [
    [0, 3.2],
    [0.3, 3.3],
    [0.7, 2.3],
    [0.9, 1.4],
    [1, 0.75],
  ],
};
const distobuccalRoot: RootShape = {
  name: "DB",
  axis: [at(2.1, 2.2, 0.6), at(2.9, 3.1, 4), at(3.4, 3.5, 7.5), at(3.3, 3.3, 10), at(2.7, 3, 12)],
  halfMesiodistal: [
    [0, 1.6],
    [0.35, 1.4],
    [0.7, 1.02],
    [0.9, 0.74],
    [1, 0.48],
  ],
  halfBuccolingual: [
    [0, 2.9],
    [0.3, 2.4],
    [0.7, 1.4],
    [0.9, 0.9],
    [1, 0.55],
  ],
};
const palatalRoot: RootShape = {
  name: "P",
  axis: [at(0.2, -2.6, 0.6), at(0.2, -4.2, 4), at(0.1, -5.5, 8), at(0, -5.7, 11), at(-0.2, -5, 13.8)],
  halfMesiodistal: [
    [0, 3.1],
    [0.28, 2.3],
    [0.7, 1.4],
    [0.9, 0.95],
    [1, 0.58],
  ],
  halfBuccolingual: [
    [0, 1.9],
    [0.35, 1.6],
    [0.7, 1.2],
    [0.9, 0.85],
    [1, 0.52],
  ],
};

const canals: readonly CanalShape[] = [
  {
    name: "MB1",
    root: "MB",
    orificeAt: 0.03,
    foramenShortMm: 0.4,
    toBuccal: [
      [0, 0.9],
      [0.3, 1.25],
      [0.75, 0.85],
      [1, 0.25],
    ],
    radiusMm: [
      [0, 0.3],
      [0.3, 0.22],
      [0.85, 0.14],
      [0.96, 0.09],
      [1, 0.13],
    ],
    ovalness: [
      [0, 1.5],
      [0.6, 1.5],
      [0.9, 1],
    ],
  },
  {
    name: "MB2",
    root: "MB",
    orificeAt: 0.08,
    foramenShortMm: 0.75,
    toBuccal: [
      [0, -1.1],
      [0.3, -1.35],
      [0.75, -0.95],
      [1, -0.42],
    ],
    toDistal: [
      [0, 0.35],
      [0.3, 0.1],
      [1, 0],
    ],
    radiusMm: [
      [0, 0.22],
      [0.3, 0.16],
      [0.85, 0.1],
      [0.96, 0.08],
      [1, 0.1],
    ],
  },
  {
    name: "DB",
    root: "DB",
    orificeAt: 0.03,
    foramenShortMm: 0.4,
    radiusMm: [
      [0, 0.32],
      [0.3, 0.22],
      [0.85, 0.14],
      [0.96, 0.1],
      [1, 0.14],
    ],
  },
  {
    name: "P",
    root: "P",
    orificeAt: 0.03,
    foramenShortMm: 0.5,
    radiusMm: [
      [0, 0.5],
      [0.3, 0.36],
      [0.85, 0.19],
      [0.96, 0.13],
      [1, 0.18],
    ],
    ovalness: [
      [0, 0.8],
      [1, 1],
    ],
  },
];

/**
 * An upper first molar with three roots and four canals. Crown 10.4 mm wide and 7.6 mm high, roots about 12 to 14 mm.
 * @source W. M. Wheeler's table of average sizes, as every textbook of dental anatomy gives it (memory); courses are invented.
 */
export const upperFirstMolar: ToothShape = {
  kind: "upper molar",
  crown: {
    halfMesiodistal: [
      [-7.6, 4.3],
      [-6, 4.9],
      [-4.4, 5.2],
      [-2.4, 4.75],
      [-0.6, 4.15],
      [0.6, 4.05],
      [2.5, 4.1],
      [4.2, 3.7],
    ],
    buccal: [
      [-7.6, 3.4],
      [-5.5, 4.6],
      [-2.2, 5.6],
      [0, 5.2],
      [2.5, 5],
      [4.5, 4.6],
    ],
    lingual: [
      [-7.6, -3.6],
      [-5.5, -5.1],
      [-3.4, -5.8],
      [0, -5.1],
      [2.5, -5.1],
      [4.5, -4.8],
    ],
    squareness: 2.7,
    cusps: [
      { x: -2.5, y: 3.2, heightMm: 7.2 },
      { x: 2.5, y: 3, heightMm: 7 },
      { x: -2.1, y: -2.9, heightMm: 7.7 },
      { x: 3, y: -3.3, heightMm: 6.4 },
    ],
    cuspSlope: 0.62,
    cuspRoundingMm: 1.7,
    trunkEndZ: 3.7,
    trunkEndsEarlierMm: { atSides: 1.5, atFaces: 0.6 },
    enamelAtSideMm: 1.35,
    enamelAtCuspMm: 2.1,
    junctionRiseMm: 0.9,
  },
  roots: [mesiobuccalRoot, distobuccalRoot, palatalRoot],
  canals,
  chamber: {
    halfMesiodistal: 2,
    halfBuccolingual: 1.5,
    middle: { x: -0.2, y: 0.2 },
    roofZ: -0.9,
    floorZ: 1.5,
    hornMm: 1.7,
  },
  filletMm: 2,
};

/** An upper second molar: smaller, its roots closer together and leaning to distal. */
export const upperSecondMolar: ToothShape = {
  ...upperFirstMolar,
  crown: {
    ...upperFirstMolar.crown,
    halfMesiodistal: [
      [-7.2, 3.8],
      [-5.6, 4.5],
      [-4, 4.8],
      [-2.2, 4.4],
      [-0.6, 3.9],
      [0.6, 3.8],
      [2.5, 3.8],
      [5, 3.4],
    ],
    cusps: [
      { x: -2.3, y: 3.1, heightMm: 7 },
      { x: 2.2, y: 2.8, heightMm: 6.5 },
      { x: -1.4, y: -2.9, heightMm: 7.1 },
      { x: 2.9, y: -2.9, heightMm: 5.5 },
    ],
    trunkEndZ: 4.2,
  },
  roots: [
    {
      ...mesiobuccalRoot,
      axis: [at(-2, 2.6, 0.6), at(-2.6, 3.1, 4), at(-2.7, 3.3, 7), at(-2.1, 3.1, 9.8), at(-1, 2.8, 12)],
    },
    {
      ...distobuccalRoot,
      axis: [at(1.9, 2.5, 0.6), at(2.2, 2.8, 4), at(2.4, 3, 7), at(2.7, 2.9, 9.5), at(3, 2.6, 11.2)],
    },
    {
      ...palatalRoot,
      axis: [at(0.2, -2.6, 0.6), at(0.3, -3.7, 4), at(0.6, -4.6, 8), at(1, -4.7, 10.4), at(1.4, -4.4, 12.6)],
    },
  ],
};
