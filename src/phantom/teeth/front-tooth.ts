import type { ToothShape } from "../anatomy/tooth.ts";
import { toothPoint as at } from "../tooth-point.ts";

/**
 * An upper central incisor. Crown 8.6 mm wide and 10.8 mm high, root about 13 mm.
 * @source W. M. Wheeler's table of average sizes, as every textbook of dental anatomy gives it (memory); courses are invented.
 */
export const upperCentralIncisor: ToothShape = {
  kind: "upper incisor",
  crown: {
    halfMesiodistal: [
      [-10.8, 4],
      [-9, 4.3],
      [-7, 4.2],
      [-3.5, 3.65],
      [-1, 3.2],
      [0.6, 3.1],
      [3, 3],
    ],
    buccal: [
      [-10.8, 0.9],
      [-7, 2.4],
      [-3, 3.5],
      [0, 3.3],
      [3, 3.1],
    ],
    lingual: [
      [-10.8, 0.1],
      [-7, -0.3],
      [-3, -2.4],
      [-1.2, -3.3],
      [0, -3.1],
      [3, -2.9],
    ],
    squareness: 2.5,
    cusps: [
      { x: -3.3, y: 0.5, heightMm: 10.8 },
      { x: -1.4, y: 0.5, heightMm: 10.8 },
      { x: 0.6, y: 0.5, heightMm: 10.75 },
      { x: 2.9, y: 0.5, heightMm: 10.5 },
    ],
    cuspSlope: 0.62,
    cuspRoundingMm: 1.5,
    trunkEndZ: 1.6,
    trunkEndsEarlierMm: { atSides: 0, atFaces: 0 },
    enamelAtSideMm: 0.9,
    enamelAtCuspMm: 1.8,
    junctionRiseMm: 2.4,
  },
  roots: [
    {
      name: "R",
      axis: [at(0, 0, -0.6), at(0, 0.1, 4), at(0.1, 0.1, 8), at(0.3, 0, 11), at(0.9, -0.2, 13.2)],
      halfMesiodistal: [
        [0, 3.1],
        [0.35, 2.7],
        [0.7, 1.9],
        [0.9, 1.25],
        [1, 0.62],
      ],
      halfBuccolingual: [
        [0, 3],
        [0.35, 2.7],
        [0.7, 2],
        [0.9, 1.3],
        [1, 0.65],
      ],
    },
  ],
  canals: [
    {
      name: "R",
      root: "R",
      orificeAt: 0.07,
      foramenShortMm: 0.4,
      radiusMm: [
        [0, 0.75],
        [0.3, 0.48],
        [0.85, 0.2],
        [0.96, 0.13],
        [1, 0.18],
      ],
    },
  ],
  chamber: {
    halfMesiodistal: 1.5,
    halfBuccolingual: 0.75,
    middle: { x: 0, y: 0 },
    roofZ: -4,
    floorZ: 2.2,
    hornMm: 1,
  },
  filletMm: 1.2,
};

/** A lower canine: one pointed cusp, a long root. */
export const lowerCanine: ToothShape = {
  ...upperCentralIncisor,
  kind: "lower canine",
  crown: {
    ...upperCentralIncisor.crown,
    halfMesiodistal: [
      [-11, 1.2],
      [-9, 2.8],
      [-7.2, 3.4],
      [-3.5, 3],
      [-1, 2.75],
      [0.6, 2.65],
      [3, 2.6],
    ],
    buccal: [
      [-11, 0.9],
      [-7, 2.6],
      [-3, 3.9],
      [0, 3.7],
      [3, 3.6],
    ],
    lingual: [
      [-11, -0.3],
      [-7, -1.3],
      [-3, -3.2],
      [-1.2, -3.9],
      [0, -3.7],
      [3, -3.5],
    ],
    cusps: [
      { x: -0.2, y: 0.4, heightMm: 11 },
      { x: -2.2, y: 0.3, heightMm: 9.4 },
      { x: 2.2, y: 0.3, heightMm: 8.9 },
    ],
    cuspSlope: 0.7,
  },
  roots: [
    {
      name: "R",
      axis: [at(0, 0, -0.6), at(0, 0.1, 5), at(0.1, 0.2, 10), at(0.4, 0.2, 13), at(1, 0.1, 15.9)],
      halfMesiodistal: [
        [0, 2.6],
        [0.35, 2.4],
        [0.7, 1.8],
        [0.9, 1.2],
        [1, 0.6],
      ],
      halfBuccolingual: [
        [0, 3.6],
        [0.35, 3.4],
        [0.7, 2.5],
        [0.9, 1.6],
        [1, 0.8],
      ],
    },
  ],
  canals: [
    {
      name: "R",
      root: "R",
      orificeAt: 0.07,
      foramenShortMm: 0.4,
      radiusMm: [
        [0, 0.6],
        [0.3, 0.4],
        [0.85, 0.18],
        [0.96, 0.12],
        [1, 0.17],
      ],
      ovalness: [
        [0, 1.9],
        [0.6, 1.5],
        [0.9, 1],
      ],
    },
  ],
  chamber: { halfMesiodistal: 0.7, halfBuccolingual: 1.3, middle: { x: 0, y: 0 }, roofZ: -4.8, floorZ: 2.2, hornMm: 1 },
};
