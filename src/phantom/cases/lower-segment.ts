import type { BoneShape } from "../anatomy/alveolar-bone.ts";
import { mandibularCanal } from "../anatomy/hollow.ts";
import { placedTooth } from "../anatomy/placed-tooth.ts";
import type { JawSegment } from "../jaw-segment.ts";
import { lowerFirstMolar, lowerFirstMolarWithThirdRoot, lowerSecondMolar } from "../teeth/lower-molar.ts";
import { immatureLowerSecondPremolar, lowerFirstPremolar, lowerSecondPremolar } from "../teeth/premolar.ts";
import { toothPoint as at } from "../tooth-point.ts";

const bone: BoneShape = {
  buccal: [
    [-2, 4.8],
    [2, 5.4],
    [6, 5.8],
    [12, 6.6],
    [20, 7.2],
    [30, 6.6],
  ],
  lingual: [
    [-2, -4.6],
    [2, -5.6],
    [6, -6.6],
    [12, -7],
    [20, -6.4],
    [30, -5.6],
  ],
  crest: [
    [-26, 1.5],
    [-13.5, 1.5],
    [-9.5, 1.7],
    [-5.7, 1.6],
    [0, 1.9],
    [5.7, 1.7],
    [11, 2],
    [16.5, 2.1],
    [26, 2.4],
  ],
  plateMm: [
    [0, 0.5],
    [4, 0.8],
    [12, 1.2],
    [20, 1.5],
    [30, 1.7],
  ],
  crestLayerMm: 0.34,
};

/** Wide marrow spaces and struts that run mostly level: the usual picture under lower teeth. */
const lowerNets = (seed: number): JawSegment["nets"] => [
  {
    spacingMm: { x: 1.5, y: 2.8, z: 1.3 },
    joins: { x: 0.74, y: 0.12, z: 0.52 },
    radiusMm: 0.068,
    depth: 6.5,
    seed: seed + 11,
  },
  {
    spacingMm: { x: 2, y: 2, z: 1.8 },
    joins: { x: 0.5, y: 0.4, z: 0.4 },
    radiusMm: 0.085,
    depth: 1.5,
    seed: seed + 12,
  },
];

/** Lower jaw from the first premolar to behind the second molar; the treated tooth is the first molar with a third root. */
export function lowerMolarSegment(seed: number): JawSegment {
  return {
    teeth: [
      placedTooth(lowerFirstMolarWithThirdRoot, at(0, 0, 0)),
      placedTooth(lowerSecondPremolar, at(-9.3, 0.2, 0.1), -2),
      placedTooth(lowerFirstPremolar, at(-16.7, 0.3, 0), -1),
      placedTooth(lowerSecondMolar, at(10.9, -0.3, 0.3), 5),
      placedTooth(lowerSecondMolar, at(21.4, -0.6, 1), 14),
    ],
    bone,
    nets: lowerNets(seed),
    hollows: [
      mandibularCanal(
        [
          [-24, 21.5],
          [-14, 20],
          [-4, 18.2],
          [6, 17.4],
          [16, 16.4],
          [24, 15],
        ],
        0.5,
        1.5,
      ),
    ],
    lesions: [],
    shaped: {},
    insets: [],
    strands: [],
    veilMm: 12,
    box: { from: at(-25, -9.6, -9), to: at(25, 9.6, 25) },
    seed,
  };
}

/** Lower jaw of a child from the canine's side to the first molar; the treated tooth is the second premolar with an open apex. */
export function lowerPremolarSegment(seed: number): JawSegment {
  return {
    teeth: [
      placedTooth(immatureLowerSecondPremolar, at(0, 0, 0)),
      placedTooth(lowerFirstPremolar, at(-7.4, 0.1, 0), 1),
      placedTooth(lowerFirstMolar, at(9.3, 0, -0.2), 3),
      placedTooth(lowerFirstPremolar, at(-14.8, 0.4, -0.6), 2),
    ],
    bone: {
      ...bone,
      crest: [
        [-26, 1.2],
        [-11, 1.2],
        [-7.4, 1.5],
        [-3.7, 1.2],
        [0, 1.5],
        [3.7, 1.2],
        [9, 1.5],
        [15, 1.4],
        [26, 1.6],
      ],
    },
    nets: lowerNets(seed),
    hollows: [
      mandibularCanal(
        [
          [-24, 20],
          [-9, 19.2],
          [-3, 18.6],
          [6, 18.4],
          [24, 17],
        ],
        0.5,
        1.5,
      ),
    ],
    lesions: [],
    shaped: {},
    insets: [],
    strands: [],
    veilMm: 11,
    box: { from: at(-19, -9.6, -9.5), to: at(19, 9.6, 28) },
    seed,
  };
}
