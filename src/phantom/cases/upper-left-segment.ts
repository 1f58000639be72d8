import { sinusOver } from "../anatomy/hollow.ts";
import { placedTooth } from "../anatomy/placed-tooth.ts";
import type { JawSegment } from "../jaw-segment.ts";
import type { Profile } from "../profile.ts";
import { upperFirstPremolar, upperSecondPremolar } from "../teeth/premolar.ts";
import { upperFirstMolar, upperSecondMolar } from "../teeth/upper-molar.ts";
import { toothPoint as at } from "../tooth-point.ts";

const buccal: Profile = [
  [-2, 5.4],
  [2, 6.3],
  [6, 6.9],
  [12, 7.2],
  [20, 8],
];
const lingual: Profile = [
  [-2, -5.6],
  [2, -6.8],
  [6, -7.8],
  [12, -8.4],
  [20, -8.6],
];
const sinusFloor: Profile = [
  [-17, 22],
  [-10, 19.4],
  [-5, 18.4],
  [-1, 15.4],
  [3, 15],
  [7, 13],
  [11, 13.9],
  [15, 12.6],
  [19, 14.2],
];

/** Upper jaw from the first premolar to behind the second molar; the treated tooth is the first molar. */
export function upperMolarSegment(seed: number): JawSegment {
  return {
    teeth: [
      placedTooth(upperFirstMolar, at(0, 0, 0)),
      placedTooth(upperSecondPremolar, at(-8.75, 0.3, 0.1), 2),
      placedTooth(upperFirstPremolar, at(-15.7, 0.5, 0), 1),
      placedTooth(upperSecondMolar, at(10.25, -0.2, 0.3), 4),
      placedTooth(upperSecondMolar, at(20, -0.4, 1.2), 12),
    ],
    bone: {
      buccal,
      lingual,
      crest: [
        [-20, 1.6],
        [-12.2, 1.5],
        [-8, 1.7],
        [-5.3, 1.6],
        [0, 1.9],
        [5.3, 1.7],
        [10, 2.1],
        [15.2, 2.2],
        [22, 2.6],
      ],
      plateMm: [
        [0, 0.4],
        [4, 0.55],
        [12, 0.7],
        [20, 0.8],
      ],
      crestLayerMm: 0.3,
    },
    nets: [
      {
        spacingMm: { x: 1.15, y: 2.6, z: 1.1 },
        joins: { x: 0.62, y: 0.12, z: 0.72 },
        radiusMm: 0.062,
        depth: 6.5,
        seed: seed + 11,
      },
      {
        spacingMm: { x: 1.5, y: 1.7, z: 1.5 },
        joins: { x: 0.5, y: 0.4, z: 0.5 },
        radiusMm: 0.075,
        depth: 1.5,
        seed: seed + 12,
      },
    ],
    hollows: [sinusOver(sinusFloor, { buccal, lingual }, seed + 31)],
    lesions: [],
    shaped: {},
    insets: [],
    strands: [],
    veilMm: 12,
    box: { from: at(-25, -10, -9), to: at(25.5, 10, 23.5) },
    seed,
  };
}
