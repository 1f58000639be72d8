import type { ToothShape } from "../anatomy/tooth.ts";
import { toothPoint as at } from "../tooth-point.ts";

/**
 * A lower second premolar with one root and one canal. Crown 7.2 mm wide and 8.2 mm high, root about 14 mm.
 * @source W. M. Wheeler's table of average sizes, as every textbook of dental anatomy gives it (memory); courses are invented.
 */
export const lowerSecondPremolar: ToothShape = {
  kind: "lower premolar",
  crown: {
    halfMesiodistal: [
      [-8.2, 2.6],
      [-6.8, 3.3],
      [-5, 3.65],
      [-2.6, 3.1],
      [-0.6, 2.65],
      [0.6, 2.55],
      [3, 2.45],
    ],
    buccal: [
      [-8.2, 1.6],
      [-6, 3],
      [-2.6, 4.1],
      [0, 3.7],
      [3, 3.5],
    ],
    lingual: [
      [-8.2, -2.4],
      [-5.6, -3.7],
      [-3.6, -4],
      [0, -3.5],
      [3, -3.3],
    ],
    squareness: 2.5,
    cusps: [
      { x: -0.1, y: 1.9, heightMm: 8.2 },
      { x: -1.3, y: -2.1, heightMm: 7.1 },
      { x: 1.5, y: -2.1, heightMm: 6.6 },
    ],
    cuspSlope: 0.55,
    cuspRoundingMm: 0.7,
    trunkEndZ: 1.6,
    trunkEndsEarlierMm: { atSides: 0, atFaces: 0 },
    enamelAtSideMm: 1.25,
    enamelAtCuspMm: 2,
    junctionRiseMm: 0.7,
  },
  roots: [
    {
      name: "R",
      axis: [at(0, 0, -0.6), at(-0.1, 0.1, 4), at(0, 0.2, 8), at(0.4, 0.2, 11.2), at(1.1, 0.1, 14.3)],
      halfMesiodistal: [
        [0, 2],
        [0.12, 2.3],
        [0.35, 2.2],
        [0.7, 1.7],
        [0.9, 1.15],
        [1, 0.6],
      ],
      halfBuccolingual: [
        [0, 3.4],
        [0.35, 3.1],
        [0.7, 2.3],
        [0.9, 1.5],
        [1, 0.75],
      ],
    },
  ],
  canals: [
    {
      name: "R",
      root: "R",
      orificeAt: 0.07,
      foramenShortMm: 0.45,
      radiusMm: [
        [0, 0.5],
        [0.3, 0.34],
        [0.85, 0.17],
        [0.96, 0.11],
        [1, 0.16],
      ],
      ovalness: [
        [0, 2],
        [0.5, 1.6],
        [0.9, 1],
      ],
    },
  ],
  chamber: { halfMesiodistal: 0.6, halfBuccolingual: 1.4, middle: { x: 0, y: 0 }, roofZ: -2.6, floorZ: 2, hornMm: 1.4 },
  filletMm: 1.2,
};

/** A lower first premolar: the buccal cusp stands high over a small lingual one. */
export const lowerFirstPremolar: ToothShape = {
  ...lowerSecondPremolar,
  crown: {
    ...lowerSecondPremolar.crown,
    cusps: [
      { x: 0, y: 1.7, heightMm: 8.6 },
      { x: 0.2, y: -2.1, heightMm: 5.8 },
    ],
  },
};

/**
 * The same tooth of a child of 13: its root is not finished, the wide canal opens with hardly a taper, and the tubercle
 * (dens evaginatus) in the middle of the chewing surface has broken off flat.
 */
export const immatureLowerSecondPremolar: ToothShape = {
  ...lowerSecondPremolar,
  crown: {
    ...lowerSecondPremolar.crown,
    cusps: [...lowerSecondPremolar.crown.cusps, { x: 0.1, y: -0.1, heightMm: 6.9 }],
  },
  roots: [
    {
      name: "R",
      axis: [at(0, 0, -0.6), at(-0.1, 0.1, 3.5), at(-0.05, 0.15, 7), at(0.15, 0.15, 10.4)],
      halfMesiodistal: [
        [0, 2],
        [0.15, 2.4],
        [0.4, 2.3],
        [0.8, 2],
        [1, 1.75],
      ],
      halfBuccolingual: [
        [0, 3.4],
        [0.4, 3.1],
        [0.8, 2.6],
        [1, 2.3],
      ],
      open: true,
    },
  ],
  canals: [
    {
      name: "R",
      root: "R",
      orificeAt: 0.05,
      foramenShortMm: -0.2,
      wide: true,
      radiusMm: [
        [0, 0.85],
        [0.3, 0.9],
        [0.7, 1.05],
        [1, 1.3],
      ],
      ovalness: [
        [0, 1.7],
        [1, 1.3],
      ],
    },
  ],
  chamber: {
    halfMesiodistal: 1.05,
    halfBuccolingual: 1.8,
    middle: { x: 0, y: 0 },
    roofZ: -3.2,
    floorZ: 1.2,
    hornMm: 1.5,
  },
};

/** An upper second premolar with one root. */
export const upperSecondPremolar: ToothShape = {
  ...lowerSecondPremolar,
  kind: "upper premolar",
  crown: {
    ...lowerSecondPremolar.crown,
    halfMesiodistal: [
      [-7.8, 2.5],
      [-6.4, 3.15],
      [-4.8, 3.45],
      [-2.6, 2.9],
      [-0.6, 2.45],
      [0.6, 2.35],
      [3, 2.3],
    ],
    buccal: [
      [-7.8, 2.6],
      [-5.6, 3.7],
      [-2.4, 4.6],
      [0, 4.2],
      [3, 4],
    ],
    lingual: [
      [-7.8, -2.6],
      [-5.4, -3.9],
      [-3.2, -4.5],
      [0, -4],
      [3, -3.8],
    ],
    cusps: [
      { x: 0.1, y: 2.4, heightMm: 7.8 },
      { x: -0.4, y: -2.5, heightMm: 7.3 },
    ],
  },
  roots: [
    {
      name: "R",
      axis: [at(0, 0, -0.6), at(0, 0.1, 4), at(0.2, 0.2, 8), at(0.6, 0.2, 11), at(1.3, 0.1, 13.9)],
      halfMesiodistal: [
        [0, 1.8],
        [0.12, 2.1],
        [0.35, 2],
        [0.7, 1.5],
        [0.9, 1.05],
        [1, 0.55],
      ],
      halfBuccolingual: [
        [0, 3.9],
        [0.35, 3.6],
        [0.7, 2.6],
        [0.9, 1.6],
        [1, 0.8],
      ],
    },
  ],
};

/** An upper first premolar with a buccal and a palatal root. */
export const upperFirstPremolar: ToothShape = {
  ...upperSecondPremolar,
  roots: [
    {
      name: "B",
      axis: [at(0, 1.6, -0.6), at(0, 2, 4), at(0.1, 2.8, 8), at(0.3, 3, 11), at(0.9, 2.8, 13.6)],
      halfMesiodistal: [
        [0, 2.2],
        [0.4, 1.8],
        [0.75, 1.2],
        [0.92, 0.8],
        [1, 0.45],
      ],
      halfBuccolingual: [
        [0, 2.3],
        [0.4, 1.7],
        [0.75, 1.2],
        [0.92, 0.8],
        [1, 0.45],
      ],
    },
    {
      name: "P",
      axis: [at(0, -1.6, -0.6), at(0, -2, 4), at(0.1, -2.7, 8), at(0.2, -2.8, 10.6), at(0.5, -2.6, 13)],
      halfMesiodistal: [
        [0, 2.2],
        [0.4, 1.7],
        [0.75, 1.1],
        [0.92, 0.75],
        [1, 0.42],
      ],
      halfBuccolingual: [
        [0, 2.2],
        [0.4, 1.6],
        [0.75, 1.1],
        [0.92, 0.75],
        [1, 0.42],
      ],
    },
  ],
  canals: [
    {
      name: "B",
      root: "B",
      orificeAt: 0.1,
      foramenShortMm: 0.4,
      radiusMm: [
        [0, 0.3],
        [0.3, 0.22],
        [0.85, 0.13],
        [0.96, 0.09],
        [1, 0.13],
      ],
    },
    {
      name: "P",
      root: "P",
      orificeAt: 0.1,
      foramenShortMm: 0.4,
      radiusMm: [
        [0, 0.3],
        [0.3, 0.22],
        [0.85, 0.13],
        [0.96, 0.09],
        [1, 0.13],
      ],
    },
  ],
};
